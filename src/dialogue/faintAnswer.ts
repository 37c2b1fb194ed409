/** Short answers that may have been anything: they decide nothing and are asked for again. */
import type { Heard } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import type { DialogueState, FaintAnswer } from "./DialogueState"
import { isFaint, isUncertain } from "./needsYes"

/**
 * A yes, a no or the name of a part, and nothing else. One that was heard just before, too faintly as well, adds to it: the
 * same mistake twice running is so much the less likely.
 */
export const faintAnswer = (reading: Interpretation, heard: Heard, before: DialogueState): FaintAnswer | null => {
  const [only, ...others] = reading.facts
  if (!only || others.length > 0 || reading.ask || reading.command || heard.margin == null) return null
  const { faint, unheard } = before
  if (only.kind === "earthing_arrangement") return strayArrangement(only.value, heard, before)
  const said = only.kind === "service" ? only.value : only.kind
  if (only.kind !== "service" && said !== "confirm" && said !== "deny") return null
  // Where nobody hears the question, what comes next would be put under the part before.
  if (only.kind === "service" && unheard) return null
  const margin = heard.margin + (faint?.said === said ? faint.margin : 0)
  return isFaint(margin) ? { said, margin } : null
}

/**
 * A bare arrangement while something else waits for its answer. A no came out as "TNS" and "two eight metres" as "TNCS", in
 * noise with up to 1.6; the same twice running is taken up, and waits for a yes.
 */
const strayArrangement = (said: string, heard: Heard, { faint, question, readBack }: DialogueState) => {
  const isElsewhere = question ? question.kind !== "earthing_arrangement" : readBack?.needsYes === true
  if (!isElsewhere || !isUncertain(heard) || faint?.said === said) return null
  return { said, margin: heard.margin ?? 0 }
}
