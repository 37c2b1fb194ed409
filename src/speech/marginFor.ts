/**
 * The margin of an answer for one voice. A voice that fits the model worse than most is asked less often; it gets no other
 * favour. What nobody would be heard saying stays silent, so that no talk of others comes in by it, and what is plain only
 * by the ease must lead twice as far: in two voices that fit badly, wrong numbers led by up to 40 nats and right ones mostly
 * by 50 to 260.
 */
import { sureMargin } from "../facts/Heard"
import { marginOf } from "./margins"
import type { Fit } from "./measureFit"
import type { WhoseVoice } from "./VoiceFit"

/** The least lead of what is plain only by the ease, in nats. */
const easedLead = 60
/** Of what does not lead so far. */
const nearlyPlain = 0.9

/** See `marginOf`. While a voice is being learnt nothing is silent: only the prompt can be heard, and it is not written. */
export const marginFor = (fit: Fit, lead: number | null, voice: WhoseVoice): number | null => {
  const usual = marginOf(fit, lead)
  if (voice === "learning") return usual ?? 0
  if (voice === null || usual === null || usual >= sureMargin) return usual
  const eased = marginOf({ ...fit, worstWord: fit.worstWord + voice.ease }, lead) ?? usual
  const mayBePlain = lead === null || lead >= easedLead
  return mayBePlain ? eased : Math.max(usual, Math.min(eased, nearlyPlain))
}
