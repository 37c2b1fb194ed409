/**
 * A job file into a store that may hold the job already. Lines are merged by their ids and none is ever overwritten: what
 * is here stands, what is new is added, and a file that goes another way than the stored log becomes a second copy.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { hashOf } from "./chain"
import { readJobFile } from "./jobFile"
import type { LogLine } from "./LogLine"
import type { Source } from "./Source"
import type { Store } from "./Store"
import { asSecondCopy } from "./secondCopy"

/** What became of a job file. */
export interface TakenJob {
  job: string
  place: string | null
  /** Lines that were new, and lines that were here already. */
  fresh: number
  known: number
  /** Where two devices carried on with one job: the job that this one now stands beside. */
  copyOf: string | null
  /** What was wrong with the file, in plain sentences. */
  faults: string[]
}

export interface FileOrder {
  /** The file's name. */
  name: string
  text: string
  /** When it is taken in, ISO 8601 with offset. */
  at: string
}

const count = (number: number, one: string, many: string) => (number === 1 ? one : `${number} ${many}`)

/** Lines that can stand in one log: of this job, and each place once. */
const sound = (job: string, lines: readonly LogLine[]): { lines: LogLine[]; faults: string[] } => {
  const ours = lines.filter((line) => line.job === job)
  const [ids, places] = [new Set<string>(), new Set<number>()]
  const kept = ours.filter((line) => {
    if (ids.has(line.id) || places.has(line.seq)) return false
    ids.add(line.id)
    places.add(line.seq)
    return true
  })
  const [foreign, double] = [lines.length - ours.length, ours.length - kept.length]
  const faults = [
    ...(foreign > 0 ? [`${count(foreign, "One line was", "lines were")} of another job and left out.`] : []),
    ...(double > 0
      ? [`${count(double, "One line stood", "lines stood")} in a place that was taken and left out.`]
      : []),
  ]
  return { lines: kept, faults }
}

const bare = (line: LogLine) => JSON.stringify(line)

/** Lines that both have, under one id, with another content; lines of which words were struck may differ. */
const differing = (stored: readonly LogLine[], lines: readonly LogLine[]): number => {
  const here = new Map(stored.map((line) => [line.id, line]))
  const struck = new Set([...stored, ...lines].flatMap((line) => (line.type === "struck" ? [line.of] : [])))
  return lines.filter((line) => {
    const same = here.get(line.id)
    return same !== undefined && !struck.has(line.id) && bare(same) !== bare(line)
  }).length
}

/** The first line of a file that stands where the stored log has another. */
const findParting = (stored: readonly LogLine[], lines: readonly LogLine[]): LogLine | undefined => {
  const idAt = new Map(stored.map((line) => [line.seq, line.id]))
  const ids = new Set(idAt.values())
  return lines.find((line) => !ids.has(line.id) && idAt.has(line.seq))
}

/** Refuses what is no job file, and what the store refuses; then nothing of it is stored. */
export const takeInJob = async (store: Store, { name, text, at }: FileOrder): Promise<Outcome<TakenJob>> => {
  const read = readJobFile(text)
  if (!read.ok) return read
  const kept = sound(read.value.job, read.value.lines)
  const faults = [...read.value.faults, ...kept.faults]
  if (kept.lines.length === 0) return refuse("No line of this job file could be read.")
  const stored = await store.read(read.value.job)
  const other = differing(stored.lines, kept.lines)
  if (other > 0)
    faults.push(`${count(other, "One line differs", "lines differ")} from what is here. What is here stands.`)
  const parting = findParting(stored.lines, kept.lines)
  const lines = parting ? asSecondCopy(kept.lines, parting) : kept.lines
  const job = lines[0]!.job
  const before = parting ? (await store.read(job)).lines : stored.lines
  const here = new Set(before.map((line) => line.id))
  const fresh = lines.filter((line) => !here.has(line.id)).length
  const hash = hashOf(text)
  const linesAfter = before.length + fresh
  const from: Source = {
    id: `${job} ${hash}`,
    job,
    file: name,
    kind: "job file",
    sha256: hash,
    at,
    lines: fresh,
    linesAfter,
    faults,
  }
  const added = await store.append(lines, [from])
  if (!added.ok) return added
  // A line that another job has under the same id is passed over by the store: it was changed, or its job was.
  const after = (await store.read(job)).lines
  const missed = linesAfter - after.length
  if (after.length === 0) return refuse("All of its lines have the ids of lines of another job. None was taken in.")
  if (missed > 0)
    faults.push(`${count(missed, "One line has the id", "lines have the ids")} of another job's and was left out.`)
  const opened = after.find((line) => line.type === "job_opened")
  const taken = { job, place: opened?.place ?? null, fresh: fresh - missed, known: lines.length - fresh }
  return done({ ...taken, copyOf: parting ? read.value.job : null, faults })
}
