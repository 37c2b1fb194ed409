/** What may be said next when nothing is being asked: what is still missing on the part that is being talked about. */
import type { DialogueState } from "../../dialogue/DialogueState"
import { missingOf } from "../../dialogue/plan"
import type { RecordedFact, Step } from "../../facts/Fact"
import { showItem } from "../parts/showItem"
import { showStep } from "../parts/showStep"

const fields: Partial<Record<RecordedFact["kind"], string>> = {
  conductor_csa: "size",
  length: "length",
  distance: "clamp distance",
  resistance: "reading",
  earthing_arrangement: "earthing arrangement",
  neutral_csa: "neutral size",
}

export interface Hint {
  words: string
  /** A sentence that would do. */
  example: string
}

const opening: Hint = { words: "Say what you fitted or read", example: "Water, ten square, six metres." }
const another: Hint = { words: "Name the next part", example: "Gas, ten square." }

/** A hint in a few words with an example; never a question, since nothing is being asked. */
export const nextHint = ({ record, item }: DialogueState): Hint => {
  if (record.entries.length === 0) return opening
  const wanted = item ? missingOf(record, item)[0] : undefined
  if (!item || !wanted) return another
  if (wanted.startsWith("step:")) {
    const step = showStep(wanted.slice(5) as Step).toLowerCase()
    return {
      words: `${showItem(item)}: say when it is done`,
      example: `${step.charAt(0).toUpperCase()}${step.slice(1)}.`,
    }
  }
  const field = fields[wanted as RecordedFact["kind"]] ?? wanted
  return { words: `${showItem(item)}: the ${field} is next`, example: "Or name another part." }
}
