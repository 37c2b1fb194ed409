/**
 * How one voice differs from those that the limits of `margins.ts` were set by: a little is added to how well its answers
 * fit. It is learnt on the device from prompts that were read, stays there, and moves nothing else: the lead over the
 * nearest other number, on which wrong numbers hang, is the same for every voice.
 */
import { z } from "zod"
import type { Fit } from "./measureFit"

/** No voice is eased by more, in nats a frame: from there on, talk of others would come in. */
export const mostEase = 0.8

export const VoiceFit = z.object({
  v: z.literal(1),
  /** Nats a frame that are added to the fit of every answer. Nought: this voice needs nothing. */
  ease: z.number().min(0).max(mostEase),
  /** Of how many prompts it was learnt. */
  prompts: z.number().int().positive(),
})
export type VoiceFit = z.infer<typeof VoiceFit>

/** The ease while a voice is being learnt: nobody is turned away then, and nothing that is heard is written. */
export const listeningWide: VoiceFit = { v: 1, ease: mostEase, prompts: 1 }

/** The fit as it is judged for this voice. */
export const easeFit = (fit: Fit, voice: VoiceFit | null): Fit =>
  voice ? { ...fit, worstWord: fit.worstWord + voice.ease } : fit
