/**
 * A yes accepts what was read back, so it has to lead what else is short by as much as one number leads another: "gas"
 * came out as "yes" with a lead of 27 nats in one voice of three, true ones lead by more. One that does not is so faint
 * that it is asked for again, in more words, and that not even the same again makes up for it.
 */
import { shippedLimits } from "./margins"
import { yeses } from "./rivals"

/** What is left of the margin of such a yes. */
const share = 0.1

/** The margin of an answer as it counts. `lead` is how far it is ahead of its nearest rival in nats, null without one. */
export const yesMargin = (text: string, margin: number, lead: number | null): number =>
  yeses.includes(text) && lead !== null && lead < shippedLimits.plainLead ? share * margin : margin
