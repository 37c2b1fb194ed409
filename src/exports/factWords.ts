/**
 * A fact as exports write it: what it is and its value, without a unit. A limited value is the text "> 99900", never a
 * bare number, so that nothing takes an over-range reading for a measured one.
 */
import type { RecordedFact } from "../facts/Fact"

const kindNames: Record<RecordedFact["kind"], string> = {
  conductor_csa: "conductor size",
  neutral_csa: "neutral size",
  service: "part",
  length: "length",
  distance: "clamp distance",
  resistance: "resistance",
  earthing_arrangement: "earthing arrangement",
  fuse_rating: "fuse rating",
  polarity: "polarity",
  step_done: "step done",
  survey: "survey",
  note: "note",
  time: "time",
}

/** "conductor size"; of a kind that is not known, its own name. */
export const kindWords = (kind: string): string =>
  (kindNames as Partial<Record<string, string>>)[kind] ?? kind.replaceAll("_", " ")

/** What a fact is. */
export const whatOf = (fact: RecordedFact): string => (fact.kind === "time" ? fact.unit : kindWords(fact.kind))

/** Its value as a number where it is a plain one, else as text. */
export const valueWords = (fact: RecordedFact): string | number => {
  if (fact.value === null) return "over range"
  if ("qualifier" in fact && fact.qualifier) return `${fact.qualifier} ${fact.value}`
  if (fact.kind === "step_done" || fact.kind === "service" || fact.kind === "survey")
    return fact.value.replaceAll("_", " ")
  return fact.value
}

/** An item's name with spaces; null is a value whose part was never said. */
export const itemWords = (item: string | null): string => (item ?? "no part").replaceAll("_", " ")
