/**
 * Utterances of a transcript or a recording as a job of its own: the whole loop is played over them, as on the command
 * line. But nobody hears it there: no value is accepted by it, whatever was said. All ids come from the content, so the
 * same file twice is one job.
 */
import { runLoop } from "../../../dialogue/runLoop"
import type { Tools } from "../../../dialogue/Tools"
import type { Heard } from "../../../facts/Heard"
import type { LogLine } from "../../../record/LogLine"
import type { Source } from "../../../record/Source"
import type { Store } from "../../../record/Store"
import { idOf } from "../../../record/secondCopy"
import { placeOfName } from "./fileKind"
import { refusedFile, type TakenFile } from "./TakenFile"

export interface HeardOrder {
  file: string
  kind: Exclude<Source["kind"], "job file">
  /** SHA-256 of the file's content. */
  sha256: string
  heards: readonly Heard[]
  /** What had to be left out of the file, in plain sentences. */
  faults?: string[]
  /** When the file was last changed, in milliseconds since 1970: the nearest thing to when the work ended. */
  changedMs: number
  /** When it is taken in, ISO 8601 with offset. */
  at: string
  pack: string
}

/** The name that a job's lines from a file carry in place of a device. */
const device = "file"

const sayValues = (lines: readonly LogLine[]): string => {
  const values = lines.filter((line) => line.type === "entry").length
  if (values === 0) return "A job of its own, without a value."
  const [count, them] = values === 1 ? ["1 value", "it"] : [`${values} values`, "them"]
  return `A job of its own, with ${count}. Nobody has said yes to ${them} yet.`
}

/** Talk and what could not be understood leave no line: how much that was is told here and nowhere else. */
const sayEmpty = (empty: number, all: number): string =>
  empty === 0 ? "" : ` Nothing came of ${empty} of the ${all} sentences.`

export const takeInHeard = async (store: Store, tools: Omit<Tools, "newId">, order: HeardOrder): Promise<TakenFile> => {
  const { file, kind, sha256, heards, faults = [], changedMs, at, pack } = order
  const job = idOf(sha256)
  const base = { file, kind, job, faults }
  const { lines: here } = await store.read(job)
  if (here.length > 0) return { ...base, fresh: 0, known: here.length, words: "Here already. Nothing was added." }
  if (heards.length === 0) return refusedFile(file, "No words that mean anything here were found in it.", kind)
  const startMs = changedMs - Math.round((heards.at(-1)?.end ?? 0) * 1000)
  let count = 0
  const newId = () => idOf(`${job} ${count++}`)
  const start = { job, place: placeOfName(file), pack, device, startMs, unheard: true }
  const { lines, exchanges } = runLoop(heards, start, { ...tools, newId })
  const size = { lines: lines.length, linesAfter: lines.length }
  const source: Source = { id: `${job} ${sha256}`, job, file, kind, sha256, at, ...size, faults }
  const added = await store.append(lines, [source])
  if (!added.ok) return refusedFile(file, added.because, kind)
  const empty = exchanges.filter((one) => "heard" in one && !one.understood).length
  const words = `${sayValues(lines)}${sayEmpty(empty, heards.length)} Its times follow the file's own date.`
  return { ...base, fresh: lines.length, known: 0, words }
}
