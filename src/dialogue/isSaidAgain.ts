/**
 * Whether a sentence says again what was just taken back. The app named those values last, so the words are a part of
 * its own; but to throw them away would lose the very value that was asked for.
 */
import type { RecordedFact } from "../facts/Fact"
import { heldIn } from "../record/holding"
import { itemOf, slotOf } from "../record/slotOf"
import type { DialogueState } from "./DialogueState"
import { withSubject } from "./withSubject"

export const isSaidAgain = ({ record, question, item }: DialogueState, facts: readonly RecordedFact[]): boolean => {
  const values = facts
    .filter((fact) => fact.kind !== "service")
    .map((fact) => withSubject(fact, question?.item ?? item))
  const isGone = (fact: RecordedFact): boolean => {
    const slot = slotOf(fact, "")
    const last = record.entries.findLast((held) => held.slot === slot)
    return itemOf(fact) !== null && !heldIn(record, slot) && last?.withdrawn != null && last.fact.value === fact.value
  }
  return values.length > 0 && values.every(isGone)
}
