/**
 * Takes a private stretch out of an utterance. The line keeps its place, its times and a mark; the words are gone from
 * its text, its other readings and its single words. Values that came from it stay, and so do words that were repeated
 * elsewhere: `repeatsOf` finds those.
 */
import type { HeardWord } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { chainHead, chainOf, digestOf, type HeardLine, linkOf, marksOf } from "./chain"
import type { Draft, LogLine } from "./LogLine"

/** What stands in a text where words were struck. */
export const struckMark = "[struck]"

export interface Stretch {
  heard: string
  /** Characters of the text as it stands, the second not included. */
  from: number
  to: number
  because: string
}

export interface Strike {
  /** The utterance's line as it is to be kept from now on. */
  left: HeardLine
  /** The line to add. */
  mark: Extract<Draft, { type: "struck" }>
  /** The stretch in the sound, in seconds, to be silenced where sound is kept. */
  sound: { start: number; end: number }
}

/** Why a store refuses to strike. */
export const notThere = "That sentence is not stored on this device."

/** Whether one line may take the place of the other: all that the log goes by is the same. */
export const isSamePlace = (a: LogLine, b: LogLine): boolean =>
  a.id === b.id && a.job === b.job && a.seq === b.seq && a.type === b.type && a.at === b.at

interface PlacedWord extends HeardWord {
  from: number
  to: number
}

/** The single words with their places in the text; null where the two do not match. */
const placeWords = (text: string, words: readonly HeardWord[]): PlacedWord[] | null => {
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

const withoutStretch = (line: HeardLine, { from, to }: Stretch): { left: HeardLine; sound: Strike["sound"] } => {
  const { heard } = line
  const placed = placeWords(heard.text, heard.words)
  const isStruck = (word: PlacedWord) => word.from < to && word.to > from
  const gone = placed?.filter(isStruck) ?? []
  // Where single words cannot be told apart in the text, all of them go rather than one too few.
  const words = placed ? placed.filter((word) => !isStruck(word)).map(({ from: _, to: __, ...word }) => word) : []
  const left = {
    ...line,
    heard: {
      ...heard,
      text: `${heard.text.slice(0, from)}${struckMark}${heard.text.slice(to)}`,
      // Other readings are the same words heard otherwise, and nobody can say where the stretch stands in them.
      alternatives: [],
      words,
    },
  }
  const sound = { start: gone[0]?.start ?? heard.start, end: gone.at(-1)?.end ?? heard.end }
  return { left, sound }
}

/** `lines` are the whole log in its order. Refuses an unknown utterance and a stretch that is not in its text. */
export const strike = (lines: readonly LogLine[], stretch: Stretch): Outcome<Strike> => {
  const { heard, from, to, because } = stretch
  const at = lines.findIndex((line) => line.type === "heard" && line.heard.id === heard)
  const line = lines[at]
  if (line?.type !== "heard") return refuse("That sentence is not in the log.")
  if (from >= to || to > line.heard.text.length) return refuse("There are no words in that stretch.")
  const { left, sound } = withoutStretch(line, stretch)
  const links = chainOf(lines)
  const earlier = marksOf(lines).get(heard)
  const before = earlier?.before ?? links[at - 1] ?? linkOf("", chainHead(line.job))
  const link = earlier?.link ?? links[at]!
  return done({
    left,
    sound,
    mark: { type: "struck", heard, from, to, because, before, link, left: digestOf(left) },
  })
}

const plain = (words: string) => words.toLowerCase().replace(/\s+/g, " ").trim()

/** Lines other than the utterance itself that hold the same words, such as a note or what the app said back. */
export const repeatsOf = (lines: readonly LogLine[], heard: string, words: string): LogLine[] => {
  const sought = plain(words)
  if (sought.length < 3) return []
  return lines.filter((line) => {
    if (line.type === "heard") return line.heard.id !== heard && plain(line.heard.text).includes(sought)
    if (line.type === "said") return plain(line.words).includes(sought)
    if (line.type === "entry") return typeof line.fact.value === "string" && plain(line.fact.value).includes(sought)
    return line.type === "kept" && plain(line.reason).includes(sought)
  })
}
