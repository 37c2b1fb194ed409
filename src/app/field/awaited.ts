/** What a yes or a no would be about, in a line: it stands beside the buttons, whatever else fills the page. */
import type { DialogueState } from "../../dialogue/DialogueState"
import type { RecordedFact } from "../../facts/Fact"
import { itemOf } from "../../record/slotOf"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"

const showValue = (fact: RecordedFact): string => {
  const { label, value } = showFact(fact)
  return fact.kind === "step_done" ? label.toLowerCase() : `${label.toLowerCase()} ${value}`
}

const showFacts = (facts: readonly RecordedFact[]): string | null => {
  const values = facts.filter((fact) => fact.kind !== "service")
  const item = values[0] && itemOf(values[0])
  if (values.length === 0) return null
  return `${item ? `${showItem(item)}: ` : ""}${values.map(showValue).join(", ")}`
}

/** What the loop asks about before it does it. */
const acts: Partial<Record<string, string>> = { sign_off: "signing off", start_over: "starting over" }

/** "Water: size 4 mm²", or null where nothing waits for a yes. */
export const awaited = ({ question, readBack, record }: DialogueState): string | null => {
  if (question) return acts[question.kind] ?? (question.candidates.length === 1 ? showFacts(question.candidates) : null)
  if (!readBack?.needsYes) return null
  return showFacts(record.entries.filter((held) => readBack.entries.includes(held.entry)).map((held) => held.fact))
}
