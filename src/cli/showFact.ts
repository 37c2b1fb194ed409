/** A fact in one short line for a terminal, with its unit. */
import type { RecordedFact } from "../facts/Fact"
import { itemOf } from "../record/slotOf"

const units: Partial<Record<RecordedFact["kind"], string>> = {
  conductor_csa: " mm²",
  neutral_csa: " mm²",
  length: " m",
  distance: " mm",
  resistance: " Ω",
  fuse_rating: " A",
}

export const showFact = (fact: RecordedFact): string => {
  const item = itemOf(fact) ?? "no part"
  const qualifier = "qualifier" in fact && fact.qualifier ? `${fact.qualifier} ` : ""
  const value = fact.value === null ? "over range" : `${fact.value}${units[fact.kind] ?? ""}`
  return `${item} ${fact.kind} ${qualifier}${value}`
}
