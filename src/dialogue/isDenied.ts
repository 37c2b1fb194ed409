/** Values that the worker said no to: of what he did not mean, nothing is put forward a second time. */
import type { RecordedFact } from "../facts/Fact"
import type { Held } from "../record/JobRecord"
import { slotOf } from "../record/slotOf"
import type { DialogueState } from "./DialogueState"

const qualifierOf = (fact: RecordedFact) => ("qualifier" in fact ? fact.qualifier : undefined)

const isSameValue = (one: RecordedFact, other: RecordedFact): boolean =>
  one.value === other.value && qualifierOf(one) === qualifierOf(other)

/** Whether this very value was said no to since something was last agreed to in its place. */
export const isDenied = ({ record, refused }: DialogueState, fact: RecordedFact): boolean => {
  const slot = slotOf(fact, "")
  const inSlot = record.entries.filter((held) => held.slot === slot)
  const agreed = inSlot.findLastIndex((held) => held.withdrawn === null && held.accepted !== null)
  const since = inSlot.slice(agreed + 1).filter((held) => held.withdrawn === "denied")
  const offered = refused.filter((one) => slotOf(one, "") === slot)
  return [...since.map((held) => held.fact), ...offered].some((one) => isSameValue(one, fact))
}

/** Whether it had taken the place of an earlier value that was said to be wrong. */
export const isRepaired = ({ record }: DialogueState, { slot, seq }: Held): boolean =>
  record.entries.some((one) => one.slot === slot && one.seq < seq && one.withdrawn === "denied")
