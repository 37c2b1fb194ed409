/**
 * A yes accepts what was read back, so it has to lead well what else is short. Four synthetic voices: "gas" came out as
 * "yes" with a lead of up to 63 nats, in quiet and at 20 dB of white noise; a bare yes leads by 75 to 137 in quiet and by
 * 9 to 49 at 20 dB, "yes that's right" by 250 and more. One that leads by too little is so faint that it is asked for
 * again, in more words, and that not even the same again makes up for it.
 */
import { yeses } from "./rivals"

/** The least lead of a yes, in nats. */
const leastLead = 70
/** What is left of the margin of one that leads by less. */
const share = 0.1

/** The margin of an answer as it counts. `lead` is how far it is ahead of its nearest rival in nats, null without one. */
export const yesMargin = (text: string, margin: number, lead: number | null): number =>
  yeses.includes(text) && lead !== null && lead < leastLead ? share * margin : margin
