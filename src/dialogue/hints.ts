/**
 * Hints for a worker whose words go under in noise. Each is given once in a sitting, when the same trouble comes for the
 * second time, and nothing is accepted more easily for it.
 */
import type { Troubles } from "./DialogueState"
import type { Turn } from "./Turn"

/** Counts one more, and tells whether it is the time for the hint. */
const isSecond = (turn: Turn, trouble: keyof Troubles): boolean => {
  const { troubles } = turn.state
  const count = troubles[trouble] + 1
  turn.set({ troubles: { ...troubles, [trouble]: count } })
  return count === 2
}

/**
 * After a yes or a no that was too faint. What has more words is like less else. The no stands last: of a sentence that an
 * ear half hears, an end that accepts would be worse than one that denies.
 */
export const hintAtMoreWords = (turn: Turn): void => {
  if (isSecond(turn, "faintAnswers")) turn.say("In this noise say yes that's right, or no that's wrong.")
}

/**
 * After a reading that was in doubt and may have been, or was taken for, one with a nine: of some voices "nought" is heard
 * as "nine", and "zero" is not.
 */
export const hintAtZero = (turn: Turn, kind: string, values: readonly unknown[]): void => {
  const { heard } = turn
  const mayBeNought = values.length === 0 || values.some((value) => String(value).includes("9"))
  if (kind !== "resistance" || !mayBeNought || heard?.margin == null || /\bzero\b/.test(heard.text)) return
  if (isSecond(turn, "readings")) turn.say("Say zero for nought.")
}
