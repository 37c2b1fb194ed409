/** Where the single words of an utterance stand in its text: an ear gives the two apart. */
import type { HeardWord } from "../facts/Heard"

/** A word with its place in the text; the second character is not included. */
export interface PlacedWord extends HeardWord {
  from: number
  to: number
}

/** The single words of an utterance with their places in the text; null where the two do not match. */
export const placeWords = (text: string, words: readonly HeardWord[]): PlacedWord[] | null => {
  let at = 0
  const placed: PlacedWord[] = []
  for (const word of words) {
    const from = text.toLowerCase().indexOf(word.text.toLowerCase(), at)
    if (from < 0) return null
    at = from + word.text.length
    placed.push({ ...word, from, to: at })
  }
  return placed
}
