/**
 * Whether a sentence says again what was just taken back, or is one of the values that were just offered. The app named
 * them last, so the words are a part of its own; but to throw them away would lose the very value that was asked for.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Interpretation } from "../facts/Interpretation"
import { heldIn, lastIn } from "../record/holding"
import { itemOf, slotOf } from "../record/slotOf"
import type { DialogueState } from "./DialogueState"
import { withSubject } from "./withSubject"

/** Whether a value of the kind that was asked for, in doubt or not, comes while several are on offer. */
const isOnOffer = ({ question }: DialogueState, { facts, ask }: Interpretation): boolean => {
  const [first, ...others] = question?.candidates ?? []
  return first !== undefined && others.length > 0 && [...facts, ask].some((one) => one?.kind === first.kind)
}

/** `facts` are those of the reading that go on record. */
export const isSaidAgain = (state: DialogueState, reading: Interpretation, facts: readonly RecordedFact[]): boolean => {
  if (isOnOffer(state, reading)) return true
  const { record, question, item } = state
  const values = facts
    .filter((fact) => fact.kind !== "service")
    .map((fact) => withSubject(fact, question?.item ?? item))
  const isGone = (fact: RecordedFact): boolean => {
    const slot = slotOf(fact, "")
    const last = lastIn(record, slot)
    return itemOf(fact) !== null && !heldIn(record, slot) && last?.withdrawn != null && last.fact.value === fact.value
  }
  return values.length > 0 && values.every(isGone)
}
