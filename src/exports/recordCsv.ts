/**
 * The record as CSV (RFC 4180, CRLF, UTF-8 with a byte order mark so that spreadsheets read it as such): one row a value.
 * A limited value is the text "> 99900", never a bare number, so that no sum takes an over-range reading for a measured
 * one; and a value that was taken back leaves its row but not its figure.
 */
import Papa from "papaparse"
import type { RecordedFact } from "../facts/Fact"
import type { Finding } from "../facts/Finding"
import { unitSign } from "../facts/unitOf"
import type { Held } from "../record/JobRecord"
import type { ExportedJob } from "./ExportedJob"
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

/** What a spreadsheet would take for a formula, when a text starts with it; the wide forms are read like the narrow. */
export const formulaStart = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/

const kindNames: Record<RecordedFact["kind"], string> = {
  conductor_csa: "conductor size",
  neutral_csa: "neutral size",
  service: "part",
  length: "length",
  distance: "clamp distance",
  resistance: "resistance",
  earthing_arrangement: "earthing arrangement",
  fuse_rating: "fuse rating",
  polarity: "polarity",
  step_done: "step done",
  survey: "survey",
  note: "note",
  time: "time",
}

const whatOf = (fact: RecordedFact) => (fact.kind === "time" ? fact.unit : kindNames[fact.kind])

const cellOf = (fact: RecordedFact): string | number => {
  if (fact.value === null) return "over range"
  if ("qualifier" in fact && fact.qualifier) return `${fact.qualifier} ${fact.value}`
  if (fact.kind === "step_done" || fact.kind === "service" || fact.kind === "survey")
    return fact.value.replaceAll("_", " ")
  return fact.value
}

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
    item: (held.item ?? "no part").replaceAll("_", " "),
    what: whatOf(held.fact),
    value: holds ? cellOf(held.fact) : "",
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

const faultRow = (fault: string, { record }: ExportedJob): CsvRow => ({
  ...(Object.fromEntries(csvColumns.map((column) => [column, ""])) as CsvRow),
  place: record.place,
  job: record.job ?? "",
  what: "fault of the file",
  state: "damaged",
  findings: fault,
})

/**
 * Rows before they are guarded and written: first any fault of the file, then each value that stands, and for a place on
 * the record where nothing stands any more the last value that did.
 */
export const csvRows = (job: ExportedJob): CsvRow[] => {
  const trails = valueTrails(job)
  const last = new Map(trails.map((trail) => [trail.held.slot, trail]))
  const standing = new Set(trails.filter(({ holds }) => holds).map(({ held }) => held.slot))
  const shown = trails.filter(
    (trail) => trail.holds || (!standing.has(trail.held.slot) && last.get(trail.held.slot) === trail),
  )
  return [...job.faults.map((fault) => faultRow(fault, job)), ...shown.map((trail) => rowOf(trail, job))]
}

/** The job as the text of a CSV file. Texts that a spreadsheet would run get an apostrophe in front; numbers do not. */
export const recordCsv = (job: ExportedJob): string => {
  const columns = [...csvColumns]
  const data = csvRows(job).map((row) => columns.map((column) => row[column]))
  return `\uFEFF${Papa.unparse({ fields: columns, data }, { newline: "\r\n", escapeFormulae: formulaStart })}\r\n`
}
