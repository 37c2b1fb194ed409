/**
 * What was said around a value, in order: the utterances it came from, what the app said back, and what the worker said
 * next. An utterance that the log has lost is told apart from silence.
 */
import type { Heard } from "../facts/Heard"
import { marksOf, type StruckLine } from "../record/chain"
import type { Held } from "../record/JobRecord"
import type { LogLine } from "../record/LogLine"

type HeardLine = Extract<LogLine, { type: "heard" }>

export interface Said {
  /** The utterance, or null where the log does not hold it. */
  heard: Heard | null
  id: string
  at: string | null
  /** The last mark, where words of it were struck. */
  struck: StruckLine | null
}

export interface Passage {
  /** What led to the value; none for a value put in by hand. */
  said: Said[]
  /** What the app said from the value on until the worker spoke again: the read-back, and any warning. */
  saidBack: string[]
  /** What the worker said next. */
  next: Said | null
}

/** The passage around an entry, or around a question when only its utterance is known. */
export const passageOf = (lines: readonly LogLine[], held: Held | null, question?: string): Passage => {
  const marks = marksOf(lines)
  const heardLines = lines.filter((line): line is HeardLine => line.type === "heard")
  const sayOf = (id: string): Said => {
    const line = heardLines.find((one) => one.heard.id === id)
    return { heard: line?.heard ?? null, id, at: line?.at ?? null, struck: (line && marks.get(line.id)) ?? null }
  }
  const ids = held ? (held.origin.by === "voice" ? held.origin.heard : []) : question ? [question] : []
  const start = held
    ? lines.findIndex((line) => line.id === held.entry)
    : lines.findIndex((line) => line.type === "heard" && line.heard.id === question)
  if (start < 0) return { said: ids.map(sayOf), saidBack: [], next: null }
  const nextAt = lines.findIndex((line, at) => at > start && line.type === "heard")
  const between = lines.slice(start + 1, nextAt < 0 ? undefined : nextAt)
  const nextLine = nextAt < 0 ? undefined : lines[nextAt]
  return {
    said: ids.map(sayOf),
    saidBack: between.flatMap((line) => (line.type === "said" ? [line.words] : [])),
    next: nextLine?.type === "heard" ? sayOf(nextLine.heard.id) : null,
  }
}
