/**
 * One file through everything that takes files, with what must hold whatever the file is: a plain sentence or a result, no
 * crash, every whole line saved, and nothing in an export that a program would run.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { parse } from "csv-parse/sync"
import { parseText } from "media-captions"
import { checkJobText } from "../../src/cli/checkFile"
import { readExportedJob } from "../../src/cli/exportCommand"
import { logHeard } from "../../src/cli/logFile"
import { readText } from "../../src/cli/readInput"
import { reportPdf } from "../../src/cli/reportPdf"
import type { ExportedJob } from "../../src/exports/ExportedJob"
import { recordCsv } from "../../src/exports/recordCsv"
import { recordJson } from "../../src/exports/recordJson"
import { safeName } from "../../src/exports/safeName"
import { saidVtt } from "../../src/exports/saidVtt"
import { readJobFile } from "../../src/record/jobFile"
import type { LogLine } from "../../src/record/LogLine"
import { readTranscript } from "../../src/speech/readTranscript"
import { realTools } from "../realTools"
import type { FuzzFile } from "./fuzzFiles"

export interface Tried {
  /** What the file came to, in a word. */
  came: "not text" | "refused" | "read" | "read in part"
  /** What should hold and does not; none where all is well. */
  wrong: string[]
}

const folder = mkdtempSync(join(tmpdir(), "bothhands-fuzz-"))
process.on("exit", () => rmSync(folder, { recursive: true, force: true }))

const isPlain = (words: string) =>
  words.length > 0 && words.length < 400 && !/\n|\bat .*:\d+:\d+|\[object|undefined|RangeError|TypeError/.test(words)

const sayUnplain = (words: readonly string[]) =>
  words.filter((one) => !isPlain(one)).map((one) => `not plain: ${JSON.stringify(one.slice(0, 200))}`)

const isRun = (cell: string) => /^[\s"]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/.test(cell)

const tryCsv = (job: ExportedJob): string[] => {
  const csv = recordCsv(job).slice(1)
  return [",", ";", "\t"].flatMap((delimiter) => {
    const rows = parse(csv, { delimiter, relax_quotes: true, relax_column_count: true }) as string[][]
    return rows
      .flat()
      .filter(isRun)
      .map((cell) => `runs with ${JSON.stringify(delimiter)}: ${cell.slice(0, 80)}`)
  })
}

const tryVtt = async ({ lines, faults }: ExportedJob): Promise<string[]> => {
  const { cues, errors } = await parseText(saidVtt(lines, faults), { strict: false, errors: true })
  const wanted = lines.filter(({ type }) => type === "heard" || type === "said").length
  const wrong = errors.map((error) => `vtt: ${error.message}`)
  return cues.length === wanted ? wrong : [...wrong, `vtt: ${cues.length} cues for ${wanted} lines`]
}

const tryJson = (job: ExportedJob): string[] => {
  const { lines } = JSON.parse(recordJson(job)) as { lines: LogLine[] }
  return JSON.stringify(lines) === JSON.stringify(job.lines) ? [] : ["json: other lines than the log's"]
}

const tryPdf = async (job: ExportedJob): Promise<string[]> => {
  const text = Buffer.from(await reportPdf(job)).toString("latin1")
  const wrong = text.startsWith("%PDF-") && text.trimEnd().endsWith("%%EOF") ? [] : ["pdf: not whole"]
  return /\/(JavaScript|JS|Launch|OpenAction|AA|EmbeddedFile)\b/.test(text.replaceAll(/\((?:\\.|[^\\)])*\)/gs, "()"))
    ? [...wrong, "pdf: something to run"]
    : wrong
}

/** Rows of the original that stand unchanged in the file must be among the lines that were read. */
const tryLost = (text: string, original: readonly string[], lines: readonly LogLine[]): string[] => {
  const there = new Set(text.split("\n"))
  const read = new Set(lines.map(({ id }) => id))
  const lost = original.slice(1).filter((row) => there.has(row) && row.includes('"line"'))
  return lost.flatMap((row) => {
    const { id } = (JSON.parse(row) as { line: LogLine }).line
    return read.has(id) ? [] : [`lost line ${id}`]
  })
}

const tryJob = async (text: string, original: string, withPdf: boolean): Promise<Tried> => {
  const file = readJobFile(text)
  const job = readExportedJob(text)
  const checked = checkJobText(text, false, realTools().check)
  if (!job.ok) {
    const lost = file.ok && file.value.lines.length > 0 ? ["refused with lines in it"] : []
    return {
      came: "refused",
      wrong: [...sayUnplain([job.because]), ...lost, ...(checked.ok ? ["check disagrees"] : [])],
    }
  }
  const { lines, faults } = job.value
  const wrong = [
    ...sayUnplain(faults),
    ...tryLost(text, original.split("\n"), lines),
    ...tryCsv(job.value),
    ...(await tryVtt(job.value)),
    ...tryJson(job.value),
    ...(withPdf ? await tryPdf(job.value) : []),
    ...(checked.ok ? [] : ["check disagrees"]),
  ]
  return { came: faults.length > 0 ? "read in part" : "read", wrong }
}

const tryTranscript = async (
  text: string,
  kind: Exclude<FuzzFile["kind"], "job">,
  withLoop: boolean,
): Promise<Tried> => {
  const faults: string[] = []
  const heards = await readTranscript(text, kind, (fault) => void faults.push(fault))
  if (!heards.ok) return { came: "refused", wrong: sayUnplain([heards.because]) }
  const wrong = sayUnplain(faults)
  if (withLoop) {
    const start = { place: "The village hall", pack: "uk-bs7671", startMs: Date.UTC(2026, 2, 2, 9) }
    const { lines } = logHeard(heards.value.slice(0, 60), start, realTools())
    const job = readExportedJob(
      `${JSON.stringify({ format: "bothhands job", v: 1, job: "x" })}\n${lines.map((line) => JSON.stringify({ line, hash: "" })).join("\n")}`,
    )
    if (!job.ok || job.value.lines.length !== lines.length)
      wrong.push("the loop wrote a line that cannot be read again")
  }
  return { came: faults.length > 0 ? "read in part" : "read", wrong }
}

/** `thorough` also makes the PDF of a job, and plays a transcript through the whole loop. */
export const tryFile = async (file: FuzzFile, original: string, thorough: boolean): Promise<Tried> => {
  const name = safeName(file.name)
  const nameWrong = /^[^./\\-][^/\\]*$/u.test(name) ? [] : [`name leaves its folder: ${name}`]
  const path = join(folder, "file")
  writeFileSync(path, file.bytes)
  try {
    const text = await readText(path)
    if (!text.ok) return { came: "not text", wrong: [...nameWrong, ...sayUnplain([text.because])] }
    const tried =
      file.kind === "job"
        ? await tryJob(text.value, original, thorough)
        : await tryTranscript(text.value, file.kind, thorough)
    return { ...tried, wrong: [...nameWrong, ...tried.wrong] }
  } catch (error) {
    return { came: "refused", wrong: [`crashed: ${(error as Error).stack?.slice(0, 600) ?? String(error)}`] }
  }
}
