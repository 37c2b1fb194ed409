/**
 * Hints for a worker whose words go under in noise. Each is given once in a sitting, and nothing is accepted more
 * easily for it.
 */
import type { RecordedFact } from "../facts/Fact"
import { sureMargin } from "../facts/Heard"
import type { Troubles } from "./DialogueState"
import type { Turn } from "./Turn"

/** After readings that were read back and that an ear was in doubt of. */
export const hintAfterReadings = (turn: Turn, facts: readonly RecordedFact[]): void => {
  const readings = facts.filter((fact) => fact.kind === "resistance").map((fact) => fact.value)
  const isInDoubt = turn.heard?.margin != null && turn.heard.margin < sureMargin
  if (isInDoubt && readings.length > 0) hintAtZero(turn, "resistance", readings)
}

/** How much trouble brings the hint: the first yes that has to be said again costs a turn, a reading in doubt is usual. */
const enough: Readonly<Record<keyof Troubles, number>> = { faintAnswers: 1, readings: 2 }

/** Counts one more, or what weighs as much as two, and tells whether it is the time for the hint. */
const isEnough = (turn: Turn, trouble: keyof Troubles, weight = 1): boolean => {
  const { troubles } = turn.state
  const before = troubles[trouble]
  turn.set({ troubles: { ...troubles, [trouble]: before + weight } })
  return before < enough[trouble] && before + weight >= enough[trouble]
}

/**
 * After a yes or a no that was too faint. What has more words is like less else. The no stands last: of a sentence that an
 * ear half hears, an end that accepts would be worse than one that denies.
 */
export const hintAtMoreWords = (turn: Turn): void => {
  if (isEnough(turn, "faintAnswers")) turn.say("Best say yes that's right, or no that's wrong.")
}

/** Two nines and more are what is made of "nought point nought …": no bond reads so. */
const nines = /9.*9/

/**
 * After a reading that was in doubt and may have been, or was taken for, one with a nine: of some voices "nought" is heard
 * as "nine", and "zero" is not.
 */
export const hintAtZero = (turn: Turn, kind: string, values: readonly unknown[]): void => {
  const { heard } = turn
  const mayBeNought = values.length === 0 || values.some((value) => String(value).includes("9"))
  if (kind !== "resistance" || !mayBeNought || heard?.margin == null || /\bzero point\b/.test(heard.text)) return
  const isTelling = values.length > 0 && values.every((value) => nines.test(String(value)))
  if (isEnough(turn, "readings", isTelling ? enough.readings : 1)) turn.say("Say zero for nought.")
}
