/** Where the lit words of a sentence lie in its sound, so that the very words that a value rests on can be played. */
import type { Heard } from "../facts/Heard"
import { placeWords } from "../record/placeWords"
import type { Span } from "./lightUp"

/** A stretch of sound in seconds, on the clock of the utterance's words. */
export interface SoundStretch {
  start: number
  end: number
}

/** From the first lit word to the last; null where none is lit, or where the ear gave no times of words. */
export const litStretch = ({ text, words }: Heard, spans: readonly Span[]): SoundStretch | null => {
  let at = 0
  const lit = spans.flatMap(({ text: piece, lit }) => {
    const from = at
    at += piece.length
    return lit ? [{ from, to: at }] : []
  })
  const placed = placeWords(text, words) ?? []
  const found = placed.filter((word) => lit.some(({ from, to }) => word.from < to && word.to > from))
  const [first, last] = [found[0], found.at(-1)]
  return first && last ? { start: first.start, end: last.end } : null
}
