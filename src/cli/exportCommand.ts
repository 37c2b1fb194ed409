/**
 * `export`: job files, one or many, as CSV, WebVTT, a PDF report, and JSON with its schemas. Status 2 where any file could not be read
 * or written, else 1 where a stop is open or a file was damaged, else 0; the other files are exported all the same.
 */
import { mkdir, readdir, realpath, stat } from "node:fs/promises"
import { basename, join } from "node:path"
import type { ExportedJob } from "../exports/ExportedJob"
import { jobFileLineSchema, recordSchema } from "../exports/jsonSchemas"
import { recordCsv } from "../exports/recordCsv"
import { recordJson } from "../exports/recordJson"
import { safeName } from "../exports/safeName"
import { saidVtt } from "../exports/saidVtt"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { allHeld } from "../record/holding"
import { createChecker } from "../rules/createChecker"
import { findPack } from "../rules/packs"
import type { Console, ExitStatus } from "./Console"
import { readCheckedJob } from "./readCheckedJob"
import { ofFile, readText } from "./readInput"
import { exitStatus } from "./showFindings"
import { writeExport } from "./writeExport"

export interface ExportOptions {
  to: string
  csv?: boolean
  vtt?: boolean
  json?: boolean
  pdf?: boolean
  schema?: boolean
  replace?: boolean
}

type Format = "csv" | "vtt" | "json" | "pdf"

const formats: Record<Format, (job: ExportedJob) => string | Promise<Uint8Array>> = {
  csv: recordCsv,
  vtt: (job) => saidVtt(job.lines, job.faults),
  json: recordJson,
  pdf: async (job) => (await import("./reportPdf")).reportPdf(job),
}
const allFormats = Object.keys(formats) as Format[]

const ending = ".bothhands.jsonl"

/** The job files that a file or folder stands for, folders all the way down. */
const findJobFiles = async (path: string): Promise<Outcome<string[]>> => {
  const found = await stat(path).catch(() => null)
  if (!found?.isDirectory()) return done([path])
  const entries = await readdir(path, { recursive: true, withFileTypes: true }).catch(() => null)
  if (!entries) return refuse(`${path}: the folder may not be read.`)
  const files = entries.filter((entry) => entry.isFile() && entry.name.endsWith(ending))
  if (files.length === 0) return refuse(`${path}: no file in the folder ends in ${ending}.`)
  return done(files.map((entry) => join(entry.parentPath, entry.name)).sort())
}

/** A job file's text as all that exports are made of. It is checked by the pack that the job was opened with. */
export const readExportedJob = (text: string): Outcome<ExportedJob> => {
  const job = readCheckedJob(text, (situation, { pack: id }) => {
    const pack = findPack(id)
    return pack ? createChecker(pack).check(situation) : { findings: [], missing: [] }
  })
  if (!job.ok || findPack(job.value.record.pack)) return job
  const notChecked = `There is no rule pack "${job.value.record.pack.replaceAll(/[\s\p{C}]+/gu, " ").slice(0, 60)}" here, so nothing was checked.`
  return done({ ...job.value, faults: [...job.value.faults, notChecked] })
}

interface Row {
  file: string
  values: string
  open: string
  outcome: string
  status: ExitStatus
}

/** A name for a job's files that no other job of this run has. */
const freeName = (file: string, taken: Set<string>): string => {
  const plain = safeName(basename(file).replace(/(\.bothhands)?\.jsonl$/i, ""))
  let name = plain
  for (let count = 2; taken.has(name.toLowerCase()); count++) name = `${plain}-${count}`
  taken.add(name.toLowerCase())
  return name
}

interface Run {
  options: ExportOptions
  wanted: readonly Format[]
  kept: ReadonlySet<string>
  taken: Set<string>
  io: Console
}

const exportFile = async (file: string, { options, wanted, kept, taken, io }: Run): Promise<Row> => {
  const text = await readText(file)
  const job = text.ok ? readExportedJob(text.value) : text
  if (!job.ok) {
    io.complain(ofFile(file, job.because))
    return { file, values: "-", open: "-", outcome: "not read", status: 2 }
  }
  const { record, findings, open, faults } = job.value
  for (const fault of faults) io.complain(`${file}: ${fault}`)
  const name = freeName(file, taken)
  const written: string[] = []
  const refused: string[] = []
  for (const format of wanted) {
    const target = { folder: options.to, name: `${name}.${format}`, replace: options.replace ?? false, kept }
    const outcome = await writeExport(await formats[format](job.value), target)
    if (outcome.ok) written.push(target.name)
    else refused.push(outcome.because)
  }
  const notes = [written.join(" "), ...(faults.length > 0 ? ["damaged, saved in part"] : []), ...refused]
  return {
    file,
    values: String(allHeld(record).length),
    open: String(open.length),
    outcome: notes.filter((note) => note !== "").join("; "),
    status: refused.length > 0 ? 2 : faults.length > 0 ? 1 : exitStatus(record, findings),
  }
}

const exportSchemas = async ({ options, kept }: Run): Promise<Row[]> => {
  const schemas = { "job-file-line.schema.json": jobFileLineSchema(), "record.schema.json": recordSchema() }
  const rows: Row[] = []
  for (const [name, schema] of Object.entries(schemas)) {
    const target = { folder: options.to, name, replace: options.replace ?? false, kept }
    const outcome = await writeExport(`${JSON.stringify(schema, null, 2)}\n`, target)
    const status = outcome.ok ? 0 : 2
    rows.push({ file: "(schema)", values: "-", open: "-", outcome: outcome.ok ? name : outcome.because, status })
  }
  return rows
}

const showTable = (rows: readonly Row[]): string[] => {
  const cells = [["file", "values", "open", "written"], ...rows.map((r) => [r.file, r.values, r.open, r.outcome])]
  const widths = [0, 1, 2].map((column) => Math.max(...cells.map((row) => row[column]!.length)))
  return cells.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join("  "))
}

const worst = (rows: readonly Row[]) => Math.max(0, ...rows.map((row) => row.status)) as ExitStatus

export const exportCommand = async (
  paths: readonly string[],
  options: ExportOptions,
  io: Console,
): Promise<ExitStatus> => {
  const named = allFormats.filter((format) => options[format])
  const everything = named.length === 0 && !options.schema
  const made = await mkdir(options.to, { recursive: true }).then(
    () => true,
    () => false,
  )
  if (!made) {
    io.complain(`${options.to}: the folder cannot be made or is a file.`)
    return 2
  }
  const found = await Promise.all(paths.map(findJobFiles))
  const refusals = found.flatMap((one) => (one.ok ? [] : [one.because]))
  for (const because of refusals) io.complain(because)
  const files = [...new Set(found.flatMap((one) => (one.ok ? one.value : [])))]
  const kept = new Set(await Promise.all(files.map((file) => realpath(file).catch(() => file))))
  // Compared with the job files' real paths, so that a link to their folder is known for what it is.
  const to = await realpath(options.to)
  const run: Run = {
    options: { ...options, to },
    wanted: everything ? allFormats : named,
    kept,
    taken: new Set(),
    io,
  }
  const rows: Row[] = []
  for (const [index, file] of files.entries()) {
    io.complain(`${index + 1}/${files.length} ${file}`)
    rows.push(await exportFile(file, run))
  }
  if (everything || options.schema) rows.push(...(await exportSchemas(run)))
  for (const line of showTable(rows)) io.print(line)
  return refusals.length > 0 ? 2 : worst(rows)
}
