/** A fact in one short line for a terminal, with its unit. */
import type { RecordedFact } from "../facts/Fact"
import { unitSign } from "../facts/unitOf"
import { itemOf } from "../record/slotOf"

export const showFact = (fact: RecordedFact): string => {
  const item = itemOf(fact) ?? "no part"
  const qualifier = "qualifier" in fact && fact.qualifier ? `${fact.qualifier} ` : ""
  const value = fact.value === null ? "over range" : `${fact.value} ${unitSign(fact.kind)}`.trimEnd()
  return `${item} ${fact.kind} ${qualifier}${value}`
}
