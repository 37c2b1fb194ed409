/**
 * Takes private words out of a line: an utterance, what the app said, a note, or the reason for keeping a warning. The line
 * keeps its place, its times and a mark; of an utterance the other readings and the single words go too. Values stay.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { chainHead, chainOf, digestOf, linkOf, marksOf } from "./chain"
import type { Draft, LogLine } from "./LogLine"
import { type PlacedWord, placeWords } from "./placeWords"

/** What stands in a text where words were struck. */
export const struckMark = "[struck]"

export interface Stretch {
  /** The line's id. */
  of: string
  /** Characters of its words as they stand, the second not included. */
  from: number
  to: number
  because: string
}

export interface Strike {
  /** The line as it is to be kept from now on. */
  left: LogLine
  /** The line to add. */
  mark: Extract<Draft, { type: "struck" }>
  /** Of an utterance: the stretch in the sound, in seconds, to be silenced where sound is kept. */
  sound: { heard: string; start: number; end: number } | null
}

/** The words of a line that can be struck, or null: what rules and questions rest on cannot. */
export const strikableWords = (line: LogLine): string | null => {
  if (line.type === "heard") return line.heard.text
  if (line.type === "said") return line.words
  if (line.type === "kept") return line.reason
  return line.type === "entry" && line.fact.kind === "note" ? line.fact.value : null
}

type HeardLine = Extract<LogLine, { type: "heard" }>

const withoutHeard = (line: HeardLine, text: string, { from, to }: Stretch): Pick<Strike, "left" | "sound"> => {
  const { heard } = line
  const placed = placeWords(heard.text, heard.words)
  const isStruck = (word: PlacedWord) => word.from < to && word.to > from
  const gone = placed?.filter(isStruck) ?? []
  // Where single words cannot be told apart in the text, all of them go rather than one too few.
  const words = placed ? placed.filter((word) => !isStruck(word)).map(({ from: _, to: __, ...word }) => word) : []
  const sound = { heard: heard.id, start: gone[0]?.start ?? heard.start, end: gone.at(-1)?.end ?? heard.end }
  // Other readings are the same words heard otherwise, and nobody can say where the stretch stands in them.
  return { left: { ...line, heard: { ...heard, text, alternatives: [], words } }, sound }
}

const withoutStretch = (line: LogLine, words: string, stretch: Stretch): Pick<Strike, "left" | "sound"> => {
  const text = `${words.slice(0, stretch.from)}${struckMark}${words.slice(stretch.to)}`
  if (line.type === "heard") return withoutHeard(line, text, stretch)
  if (line.type === "said") return { left: { ...line, words: text }, sound: null }
  if (line.type === "kept") return { left: { ...line, reason: text.slice(0, 500) }, sound: null }
  const isNote = line.type === "entry" && line.fact.kind === "note"
  return {
    left: isNote ? { ...line, fact: { ...line.fact, value: text.slice(0, 2000) } as typeof line.fact } : line,
    sound: null,
  }
}

/** `lines` are the whole log in its order. Refuses a line without such words and a stretch that is not in them. */
export const strike = (lines: readonly LogLine[], stretch: Stretch): Outcome<Strike> => {
  const { of, from, to, because } = stretch
  const at = lines.findIndex((line) => line.id === of)
  const line = lines[at]
  const words = line ? strikableWords(line) : null
  if (!line || words === null) return refuse("Those words are not in the log.")
  if (from >= to || to > words.length) return refuse("There are no words in that stretch.")
  const { left, sound } = withoutStretch(line, words, stretch)
  const links = chainOf(lines)
  const earlier = marksOf(lines).get(of)
  const before = earlier?.before ?? links[at - 1] ?? linkOf("", chainHead(line.job))
  const link = earlier?.link ?? links[at]!
  return done({ left, sound, mark: { type: "struck", of, from, to, because, before, link, left: digestOf(left) } })
}

/** Other places that hold the same words, such as a note or what the app said back. */
export const repeatsOf = (lines: readonly LogLine[], of: string, words: string): Omit<Stretch, "because">[] => {
  const sought = words.trim().toLowerCase()
  if (sought.length < 3) return []
  return lines.flatMap((line) => {
    const from = line.id === of ? -1 : (strikableWords(line)?.toLowerCase().indexOf(sought) ?? -1)
    return from < 0 ? [] : [{ of: line.id, from, to: from + sought.length }]
  })
}
