/**
 * A yes accepts what was read back, so it has to lead well what else is short. Four synthetic voices: once the ear had heard
 * five sentences of a voice, "gas" came out as "yes" with a lead of up to 16 nats, in quiet and at 20 dB of white noise; a
 * bare yes led by 78 to 110 in quiet (in the sample recording by 30 and more) and by 23 to 77 at 20 dB, "yes that's right"
 * by 288 and more. One that leads by too little is so faint that it is asked for again, in more words, and that not even the
 * same again makes up for it.
 */
import { yeses } from "./rivals"

/** The least lead of a yes, in nats, and of one that is the first of a voice: there "gas" led by up to 63. */
const [leastLead, leastLeadOfNew] = [28, 70]
/** What is left of the margin of one that leads by less. */
const share = 0.1

/** The margin of an answer as it counts. `lead` is how far it is ahead of its nearest rival in nats, null without one. */
export const yesMargin = (text: string, margin: number, lead: number | null, isNewVoice = false): number => {
  const least = isNewVoice ? leastLeadOfNew : leastLead
  return yeses.includes(text) && lead !== null && lead < least ? share * margin : margin
}
