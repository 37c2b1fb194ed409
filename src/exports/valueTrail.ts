/**
 * The way back from a value to what was said: the utterances it came from, what the app said next, and the values that
 * stood in its place before. An utterance that a damaged file has lost is told apart from one that said nothing.
 */
import { allHeld } from "../record/holding"
import type { Held } from "../record/JobRecord"
import type { LogLine } from "../record/LogLine"
import type { ExportedJob } from "./ExportedJob"
import type { ExportedValue } from "./ExportedRecord"

export interface ValueTrail {
  held: Held
  /** Whether this is the value that stands. */
  holds: boolean
  state: ExportedValue["state"]
  origin: ExportedValue["origin"]
  /** The utterances behind it, or null in the place of one that is not in the file. Of a hand entry: its reason. */
  words: (string | null)[]
  /** All that the app said between the entry and the next utterance: the read-back, and any warning or caution. */
  saidBack: string[]
  /** Entries that stood in the same place before, oldest first. */
  earlier: Held[]
}

type HeardLine = Extract<LogLine, { type: "heard" }>

const stateOf = (held: Held, holds: boolean): ExportedValue["state"] => {
  if (held.withdrawn) return held.withdrawn === "denied" ? "taken back" : "undone"
  if (!holds) return "replaced"
  if (held.accepted === "tapped") return "yes by tap"
  if (held.accepted) return held.accepted === "said_yes" ? "said yes" : "not challenged"
  return held.needsYes ? "waiting for a yes" : "not answered"
}

/** By entry, what was said after it until something was heard. */
const saidAfter = (ordered: readonly LogLine[]): Map<string, string[]> => {
  const after = new Map<string, string[]>()
  let said: string[] = []
  for (const line of ordered.toReversed()) {
    if (line.type === "heard") said = []
    if (line.type === "said") said = [line.words, ...said]
    if (line.type === "entry") after.set(line.id, said)
  }
  return after
}

const wordsOf = (held: Held, heard: ReadonlyMap<string, HeardLine>) => {
  if (held.origin.by === "hand") return { origin: "by hand" as const, words: [held.origin.reason] }
  const found = held.origin.heard.map((id) => heard.get(id)?.heard ?? null)
  const typed = found.every((one) => one?.engine === "typed")
  return { origin: typed ? ("typed" as const) : ("spoken" as const), words: found.map((one) => one?.text ?? null) }
}

/** Every entry of the job with its way back, in the order of the log; earlier and withdrawn ones too. */
export const valueTrails = ({ lines, record }: Pick<ExportedJob, "lines" | "record">): ValueTrail[] => {
  const ordered = [...lines].sort((a, b) => a.seq - b.seq)
  const said = saidAfter(ordered)
  const standing = new Map(allHeld(record).map((held) => [held.slot, held.entry]))
  const earlier = new Map<string, Held[]>()
  const heard = new Map(ordered.flatMap((line) => (line.type === "heard" ? [[line.heard.id, line] as const] : [])))
  return record.entries.map((held) => {
    const holds = standing.get(held.slot) === held.entry
    const before = earlier.get(held.slot) ?? []
    earlier.set(held.slot, [...before, held])
    return {
      held,
      holds,
      state: stateOf(held, holds),
      ...wordsOf(held, heard),
      saidBack: said.get(held.entry) ?? [],
      earlier: before.filter((other) => other.seq < held.seq),
    }
  })
}
