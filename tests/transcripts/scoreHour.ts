/**
 * An hour with damaged words through the loop, sentence by sentence against what the same sentence gives undamaged. What
 * a wrong value means depends on what the desk shows of it, so each is judged by its place in the work list.
 */
import { runLoop } from "../../src/dialogue/runLoop"
import { allHeld } from "../../src/record/holding"
import type { LogLine } from "../../src/record/LogLine"
import type { PointKind } from "../../src/review/Point"
import { reviewJob } from "../../src/review/ReviewedJob"
import { workList } from "../../src/review/workList"
import { realTools } from "../realTools"
import { type Damaged, type DamageKind, damageLines } from "./damageWords"
import { asHeard, wholeHour } from "./wholeHour"

/**
 * `asked`: something in it is asked about; `lost`: a value is missing and nothing asks for it; `caught`: a wrong value
 * with a finding, a doubt or a question at it; `unseen`: a wrong value that only says that nobody has said yes to it;
 * `silent`: a wrong value that passes for one that somebody accepted.
 */
export const outcomes = ["right", "asked", "lost", "caught", "unseen", "silent"] as const
export type Outcome = (typeof outcomes)[number]
export const damageOf = ({ kinds }: Damaged): DamageKind | "several" | "none" =>
  kinds.length > 1 ? "several" : (kinds[0] ?? "none")

type Entry = Extract<LogLine, { type: "entry" }>

const tools = realTools()

/** The loop over these sentences, as the office plays it over a file. */
export const playHour = (texts: readonly string[]): readonly LogLine[] => {
  let count = 0
  const start = { job: "hour", place: "The village hall", pack: "uk-bs7671", device: "file", unheard: true }
  const newId = () => `l${count++}`
  return runLoop(asHeard(texts), { ...start, startMs: Date.UTC(2026, 2, 2, 9) }, { ...tools, newId }).lines
}

const keyOf = ({ fact }: Entry) =>
  JSON.stringify([
    fact.kind,
    fact.value,
    "qualifier" in fact ? fact.qualifier : 0,
    "subject" in fact ? fact.subject : 0,
  ])

interface Given {
  entries: Entry[]
  asked: boolean
}

/** By the utterance that gave them. What was taken back in the same sentence counts for nothing. */
const bySentence = (lines: readonly LogLine[]): ReadonlyMap<string, Given> => {
  const found = new Map<string, Given>()
  const of = (id: string) => {
    const known = found.get(id) ?? { entries: [], asked: false }
    found.set(id, known)
    return known
  }
  for (const line of lines) {
    if (line.type === "entry" && line.origin.by === "voice" && line.fact.kind !== "service")
      of(line.origin.heard.at(-1)!).entries.push(line)
    if (line.type === "asked" && line.heard) of(line.heard).asked = true
  }
  return found
}

const quiet: readonly PointKind[] = ["kept", "unchallenged", "rest"]

const undamaged = new Map<number, ReadonlyMap<string, Given>>()
const truthOf = (texts: readonly string[]) => {
  const known = undamaged.get(texts.length) ?? bySentence(playHour(texts))
  undamaged.set(texts.length, known)
  return known
}

/** What the desk says of each value that holds. */
const atDesk = (lines: readonly LogLine[]): ReadonlyMap<string, Outcome> => {
  const job = reviewJob({ lines }, (situation) => tools.check(situation))
  const points = workList(job).filter(({ held }) => held !== null)
  const accepted = new Set(allHeld(job.record).flatMap((held) => (held.accepted === null ? [] : [held.entry])))
  return new Map(
    points.map(({ held, kind }) => {
      const silent = accepted.has(held!.entry) || quiet.includes(kind)
      return [held!.entry, silent ? "silent" : kind === "unseen" ? "unseen" : "caught"]
    }),
  )
}

const worst = (found: readonly Outcome[]): Outcome | undefined => outcomes.findLast((one) => found.includes(one))

export interface ScoredLine {
  text: string
  damaged: Damaged
  outcome: Outcome
}

/**
 * The first so many sentences of the hour, or all, with one word in twenty damaged: a score for each. A value that a
 * later one replaced cannot mislead anybody.
 */
export const scoreHour = (seed: number, sentences?: number): ScoredLine[] => {
  const texts = wholeHour().slice(0, sentences)
  const damaged = damageLines(texts, 0.05, seed)
  const truth = truthOf(texts)
  const lines = playHour(damaged.map((one) => one.text))
  const given = bySentence(lines)
  const seen = atDesk(lines)
  return texts.map((text, at) => {
    const id = `line-${at + 1}`
    const meant = new Set((truth.get(id)?.entries ?? []).map(keyOf))
    const { entries, asked } = given.get(id) ?? { entries: [], asked: false }
    const wrong = entries.filter((entry) => !meant.has(keyOf(entry)))
    const isShort = [...meant].some((key) => !entries.some((entry) => keyOf(entry) === key))
    const shown = worst(wrong.flatMap((entry) => seen.get(entry.id) ?? []))
    const plain = asked ? "asked" : isShort ? "lost" : "right"
    return { text, damaged: damaged[at]!, outcome: shown === "unseen" && asked ? "caught" : (shown ?? plain) }
  })
}
