/**
 * The place on the record that a fact fills: an item and a field of it. Two facts in one slot are two versions of the
 * same thing, and the later one holds.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import { ownerOfStep } from "../facts/ownerOfStep"

/** The item a fact belongs to, or null where the words did not say and the loop has to ask. */
export const itemOf = (fact: RecordedFact): Item | null => {
  switch (fact.kind) {
    case "service":
      return fact.value
    case "earthing_arrangement":
    case "neutral_csa":
    case "fuse_rating":
    case "polarity":
      return "supply"
    case "time":
      return "job"
    case "step_done":
      return ownerOfStep[fact.value] ?? fact.subject ?? null
    case "note":
      return fact.subject ?? "job"
    default:
      return fact.subject ?? null
  }
}

/** Item and field as one key, such as `water/length` or `gas/step_done/clamp_fitted`. Notes never share a slot. */
export const slotOf = (fact: RecordedFact, entryId: string): string => {
  const item = itemOf(fact) ?? "nowhere"
  if (fact.kind === "step_done") return `${item}/step_done/${fact.value}`
  if (fact.kind === "note" || fact.kind === "time") return `${item}/${fact.kind}/${entryId}`
  return `${item}/${fact.kind}`
}
