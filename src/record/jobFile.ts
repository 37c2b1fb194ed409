/**
 * The job file: a job's log as text, one JSON object a line. The first names the format and the job; each further one
 * holds a log line and a hash over it and all before it; the last says how many there are. So a file that was cut is
 * known to be cut, one that was changed is known to be changed, and what stands before the fault can still be read.
 */
import { z } from "zod"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { chainHead, chainOf, digestOf, linkOf, marksOf, type StruckLine } from "./chain"
import { LogLine } from "./LogLine"

/** The first line of a job file. */
export const JobFileHead = z.object({ format: z.literal("bothhands job"), v: z.literal(1), job: z.string() })
/** A log line with its hash, as far as it is looked at before the line itself is. */
export const JobFileRow = z.object({ line: z.unknown(), hash: z.string() })
/** The last line of a job file. */
export const JobFileTail = z.object({ end: z.object({ lines: z.number().int(), hash: z.string() }) })

/** What stood in a job file. `faults` is empty for a whole and untouched one. */
export interface JobFile {
  job: string
  lines: LogLine[]
  faults: string[]
  /** Lines of which words were struck; they are proved by the mark and not by the chain alone. */
  struck: number
}

/** Files over this size are not a job of one visit and are refused. */
export const mostBytes = 64 * 1024 * 1024

/** A job's lines as the text of a job file. */
export const writeJobFile = (lines: readonly LogLine[]): string => {
  const head = chainHead(lines[0]?.job ?? "")
  const links = chainOf(lines)
  const rows = lines.map((line, index) => JSON.stringify({ line, hash: links[index] }))
  const hash = links.at(-1) ?? linkOf("", head)
  return `${[JSON.stringify(head), ...rows, JSON.stringify({ end: { lines: lines.length, hash } })].join("\n")}\n`
}

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** The mark that a row holds, if it holds one. */
const markIn = (row: string): LogLine[] => {
  const found = JobFileRow.safeParse(parseJson(row))
  const line = found.success ? LogLine.safeParse(found.data.line) : undefined
  return line?.success && line.data.type === "struck" ? [line.data] : []
}

interface Reading {
  hash: string
  marks: ReadonlyMap<string, StruckLine>
  struck: number
  lines: LogLine[]
  faults: string[]
  ended: boolean
}

/** Whether a line with struck words is what the mark says is left, in the place that the mark says. */
const fitsMark = (mark: StruckLine, before: string, { line, hash }: z.infer<typeof JobFileRow>): boolean =>
  mark.before === before && mark.link === hash && mark.left === digestOf(line)

/** What is wrong with a row's place in the chain, or null. */
const linkFault = (reading: Reading, row: z.infer<typeof JobFileRow>, line: LogLine, number: number) => {
  if (line.type === "signed_off" && line.over !== undefined && line.over !== reading.hash)
    return `Line ${number} signs another record than the one before it.`
  const mark = reading.marks.get(line.id)
  if (!mark) {
    const fits = linkOf(reading.hash, row.line) === row.hash
    return fits ? null : `Line ${number} was changed, or one before it is missing.`
  }
  reading.struck++
  const fits = fitsMark(mark, reading.hash, row)
  return fits ? null : `Line ${number} had words struck, and what is left of it is not what the mark says.`
}

/** Members that lie too deep in each other cannot be written again, so such a line is read but not proved. */
const tryLinkFault: typeof linkFault = (reading, row, line, number) => {
  try {
    return linkFault(reading, row, line, number)
  } catch {
    return `Line ${number} was changed: it holds more than can be checked.`
  }
}

const readRow = (reading: Reading, value: unknown, number: number): void => {
  const tail = JobFileTail.safeParse(value)
  if (tail.success) {
    reading.ended = true
    const { lines, hash } = tail.data.end
    if (lines !== reading.lines.length) {
      reading.faults.push(`The file says it holds ${lines} lines, and ${reading.lines.length} could be read.`)
    } else if (hash !== reading.hash) reading.faults.push("The closing hash of the file does not fit.")
    return
  }
  const row = JobFileRow.safeParse(value)
  const line = row.success ? LogLine.safeParse(row.data.line) : undefined
  if (!row.success || !line?.success) {
    reading.faults.push(`Line ${number} could not be read.`)
    return
  }
  const fault = tryLinkFault(reading, row.data, line.data, number)
  if (fault) reading.faults.push(fault)
  // The chain goes on from what the file claims, so that one changed line is reported once and not for ever after.
  reading.hash = row.data.hash
  reading.lines.push(line.data)
}

/** Reads a job file, saving what can be saved. Refuses, in plain words, what is no job file at all. */
export const readJobFile = (text: string): Outcome<JobFile> => {
  if (text.trim() === "") return refuse("The file is empty.")
  if (text.length > mostBytes) return refuse("The file is too large to be a job file (over 64 MB).")
  const rows = text.split("\n")
  const head = JobFileHead.safeParse(parseJson(rows[0] ?? ""))
  if (!head.success) return refuse("This is not a Bothhands job file.")
  // A mark comes after the line it is about, so all marks are looked for first.
  const marks = marksOf(rows.flatMap((row) => (row.includes('"struck"') ? markIn(row) : [])))
  const reading: Reading = { hash: linkOf("", head.data), marks, struck: 0, lines: [], faults: [], ended: false }
  for (const [index, row] of rows.entries()) {
    if (index > 0 && row.trim() !== "") readRow(reading, parseJson(row), index + 1)
  }
  if (!reading.ended) reading.faults.push("The file is cut: its end is missing.")
  return done({ job: head.data.job, lines: reading.lines, faults: reading.faults, struck: reading.struck })
}
