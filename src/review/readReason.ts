/** Why something is changed or struck at the desk: part of the record, so it may not be left out. */
import { done, type Outcome, refuse } from "../facts/Outcome"

const [leastLetters, mostLetters] = [3, 500]

/** The reason as it is kept; refuses one that says nothing. */
export const readReason = (reason: string): Outcome<string> => {
  const why = reason.trim()
  return why.length < leastLetters ? refuse("Say why, in a few words.") : done(why.slice(0, mostLetters))
}
