/**
 * The record as CSV (RFC 4180, CRLF, UTF-8 with a byte order mark so that spreadsheets read it as such): one row a value.
 * A value that was taken back leaves its row but not its figure, so that no sum counts it.
 */
import Papa from "papaparse"
import type { Finding } from "../facts/Finding"
import { unitSign } from "../facts/unitOf"
import type { Held } from "../record/JobRecord"
import type { ExportedJob } from "./ExportedJob"
import { itemWords, valueWords, whatOf } from "./factWords"
import { guardFormula } from "./guardFormula"
import { type ValueTrail, valueTrails } from "./valueTrail"

/** The columns, in order. */
export const csvColumns = [
  "place",
  "job",
  "item",
  "what",
  "value",
  "unit",
  "state",
  "origin",
  "words",
  "said back",
  "time",
  "earlier values",
  "findings",
  "entry",
] as const
export type CsvRow = Record<(typeof csvColumns)[number], string | number>

const showFinding = (finding: Finding, job: ExportedJob): string => {
  const isWarning = finding.severity === "stop" || finding.severity === "warn"
  const state = isWarning ? (job.open.includes(finding) ? ", open" : ", kept on purpose") : ""
  const { standard, edition, clause } = finding.source
  return `${finding.severity}${state}: ${finding.shown} [${standard} ${edition}, ${clause}, ${finding.status}]`
}

const findingsOf = (held: Held, job: ExportedJob) =>
  job.findings.filter((finding) => finding.rests.includes(held.entry)).map((finding) => showFinding(finding, job))

const rowOf = (trail: ValueTrail, job: ExportedJob): CsvRow => {
  const { held, holds } = trail
  return {
    place: job.record.place,
    job: job.record.job ?? "",
    item: itemWords(held.item),
    what: whatOf(held.fact),
    value: holds ? valueWords(held.fact) : "",
    unit: holds ? unitSign(held.fact.kind) : "",
    state: trail.state,
    origin: trail.origin,
    words: trail.words.map((words) => words ?? "(not in the file)").join(" / "),
    "said back": trail.saidBack.join(" / "),
    time: held.at,
    "earlier values": trail.earlier.length,
    findings: findingsOf(held, job).join(" / "),
    entry: held.entry,
  }
}

/** A row about the job and not about a value. */
const jobRow = ({ record }: ExportedJob, cells: Partial<CsvRow>): CsvRow => ({
  ...(Object.fromEntries(csvColumns.map((column) => [column, ""])) as CsvRow),
  place: record.place,
  job: record.job ?? "",
  ...cells,
})

const faultRow = (fault: string, job: ExportedJob): CsvRow =>
  jobRow(job, { what: "fault of the file", state: "damaged", findings: fault })

/** Signatures that hold, and each time that a signed record was opened again. */
const signingRows = (job: ExportedJob): CsvRow[] => [
  ...job.record.reopenings.map(({ at, because }) =>
    jobRow(job, { what: "signature", state: "opened again", words: because, time: at }),
  ),
  ...job.record.signatures.map(({ at, role, name }) =>
    jobRow(job, { what: "signature", value: role, state: "signed", words: name ?? "", time: at }),
  ),
]

/**
 * Rows before they are guarded and written: first any fault of the file, then each value that stands, and for a place on
 * the record where nothing stands any more the last value that did; at the end who signed.
 */
export const csvRows = (job: ExportedJob): CsvRow[] => {
  const trails = valueTrails(job)
  const last = new Map(trails.map((trail) => [trail.held.slot, trail]))
  const standing = new Set(trails.filter(({ holds }) => holds).map(({ held }) => held.slot))
  const shown = trails.filter(
    (trail) => trail.holds || (!standing.has(trail.held.slot) && last.get(trail.held.slot) === trail),
  )
  const faults = job.faults.map((fault) => faultRow(fault, job))
  return [...faults, ...shown.map((trail) => rowOf(trail, job)), ...signingRows(job)]
}

const guarded = (cell: string | number) => (typeof cell === "string" ? guardFormula(cell) : cell)

/** The job as the text of a CSV file. Texts that a spreadsheet would run get an apostrophe in front; numbers do not. */
export const recordCsv = (job: ExportedJob): string => {
  const columns = [...csvColumns]
  const data = csvRows(job).map((row) => columns.map((column) => guarded(row[column])))
  return `\uFEFF${Papa.unparse({ fields: columns, data }, { newline: "\r\n" })}\r\n`
}
