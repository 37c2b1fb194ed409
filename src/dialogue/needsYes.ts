/**
 * Which facts must be answered with a yes before they count as accepted. Readings always, and what rests on an ear
 * that was unsure; a routine fact may go unchallenged.
 */
import type { RecordedFact } from "../facts/Fact"
import { type Heard, sureMargin } from "../facts/Heard"

/** Below this margin not even a yes or a no is taken. */
const faintMargin = 0.3

/** Whether what was heard with this margin may as well have been something else altogether. */
export const isFaint = (margin: number): boolean => margin < faintMargin

export const needsYes = (fact: RecordedFact, heard: Heard | null): boolean => {
  // The name of a part is read back with every value that is put under it, and those values carry the doubt.
  if (fact.kind === "service") return false
  if (fact.kind === "resistance" || (fact.kind === "polarity" && fact.value === "reversed")) return true
  // A part that is left without a bond because of a misheard word would never be looked at again.
  if (fact.kind === "survey" && fact.value !== "needs_bond" && fact.value !== "not_here") return true
  return heard?.margin != null && heard.margin < sureMargin
}
