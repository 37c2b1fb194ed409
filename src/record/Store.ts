/**
 * Where logs live. An adapter answers only when what it was given is safely on disk. It must not assume anything about
 * what lines mean.
 */
import type { Outcome } from "../facts/Outcome"
import type { JobRow } from "./JobRow"
import type { LogLine } from "./LogLine"
import type { Source } from "./Source"

/** One job as a list shows it. */
export interface JobSummary {
  job: string
  place: string
  openedAt: string
  lastAt: string
  lines: number
  /** False once the worker has put the job away, and while nobody has carried on with a job that came in as a file. */
  inHand: boolean
}

/** A log as it was found: the lines that could be read, and how many could not. */
export interface FoundLog {
  lines: LogLine[]
  damaged: number
}

/** The rows of all jobs as they are kept. */
export interface FoundRows {
  rows: JobRow[]
  /** Jobs whose row could not be read or was made by other rules: to be made anew. Such a row is still shown. */
  stale: string[]
}

export interface Store {
  /**
   * Adds lines of one or more jobs, all or none, and resolves once they would survive a power cut. A line whose id is
   * already there is passed over; two different lines with one `job` and `seq` are refused. The jobs' rows, and where
   * the lines came from, are written with them or not at all.
   */
  append(lines: readonly LogLine[], from?: readonly Source[]): Promise<Outcome>
  /**
   * The only change to a stored line that there is: `left` takes the place of the line of its id, and `mark`, which says
   * so, is added in the same stroke. Refused where no such line is stored, or where it is not in the same place.
   */
  strike(left: LogLine, mark: LogLine): Promise<Outcome>
  /** All lines of a job in the order of `seq`. An unknown job gives none. */
  read(job: string): Promise<FoundLog>
  /** Newest first; rows that are missing are made first. */
  jobs(): Promise<JobSummary[]>
  /** The rows of the jobs that were opened last, and how many jobs there are: what a list can show at once. */
  newest(most: number): Promise<{ rows: JobRow[]; jobs: number }>
  /** One row a job, in no order. */
  rows(): Promise<FoundRows>
  /** Makes the rows of these jobs anew from their logs, and gives them. */
  renew(jobs: readonly string[]): Promise<JobRow[]>
  /** Jobs that have lines and no row at all: none, unless rows were lost. Slow in a store of thousands. */
  rowless(): Promise<string[]>
  /** The files that a job's lines were taken in from, or those of all jobs. */
  sources(job?: string): Promise<Source[]>
  close(): Promise<void>
}
