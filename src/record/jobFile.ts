/**
 * The job file: a job's log as text, one JSON object a line. The first names the format and the job; each further one
 * holds a log line and a hash over it and all before it; the last says how many there are. So a file that was cut is
 * known to be cut, one that was changed is known to be changed, and what stands before the fault can still be read.
 */
import { sha256 } from "@noble/hashes/sha2.js"
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js"
import { z } from "zod"
import { done, type Outcome, refuse } from "../facts/Outcome"
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
}

/** Files over this size are not a job of one visit and are refused. */
export const mostBytes = 64 * 1024 * 1024

const link = (before: string, line: unknown) => bytesToHex(sha256(utf8ToBytes(before + JSON.stringify(line))))

/** A job's lines as the text of a job file. */
export const writeJobFile = (lines: readonly LogLine[]): string => {
  const head = { format: "bothhands job", v: 1, job: lines[0]?.job ?? "" }
  let hash = link("", head)
  const rows = lines.map((line) => {
    hash = link(hash, line)
    return JSON.stringify({ line, hash })
  })
  return `${[JSON.stringify(head), ...rows, JSON.stringify({ end: { lines: lines.length, hash } })].join("\n")}\n`
}

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

interface Reading {
  hash: string
  lines: LogLine[]
  faults: string[]
  ended: boolean
}

const readRow = (reading: Reading, text: string, number: number): void => {
  const value = parseJson(text)
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
  reading.hash = link(reading.hash, row.data.line)
  if (reading.hash !== row.data.hash) reading.faults.push(`Line ${number} was changed, or one before it is missing.`)
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
  const reading: Reading = { hash: link("", head.data), lines: [], faults: [], ended: false }
  for (const [index, row] of rows.entries()) {
    if (index > 0 && row.trim() !== "") readRow(reading, row, index + 1)
  }
  if (!reading.ended) reading.faults.push("The file is cut: its end is missing.")
  return done({ job: head.data.job, lines: reading.lines, faults: reading.faults })
}
