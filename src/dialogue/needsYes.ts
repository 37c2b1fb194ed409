/**
 * Which facts must be answered with a yes before they count as accepted. Readings always, and what rests on an ear
 * that was unsure; a routine fact may go unchallenged.
 */
import type { RecordedFact } from "../facts/Fact"
import { type Heard, sureMargin } from "../facts/Heard"

/**
 * Below this margin even what is plain waits for a yes where nothing but the words speaks for it: a value that puts right
 * another, and an arrangement that nobody asked for. In noise wrong ones came with up to 1.4, right ones in quiet with 2.
 */
const certainMargin = 2

/** Whether an ear that can be in doubt was less than certain of it. */
export const isUncertain = (heard: Heard | null): boolean => heard?.margin != null && heard.margin < certainMargin

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
