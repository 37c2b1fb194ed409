/**
 * Where logs live. An adapter answers only when what it was given is safely on disk. It must not assume anything about
 * what lines mean.
 */
import type { Outcome } from "../facts/Outcome"
import type { LogLine } from "./LogLine"

/** One job as a list shows it. */
export interface JobSummary {
  job: string
  place: string
  openedAt: string
  lastAt: string
  lines: number
  /** False once the worker has put the job away. */
  inHand: boolean
}

/** A log as it was found: the lines that could be read, and how many could not. */
export interface FoundLog {
  lines: LogLine[]
  damaged: number
}

export interface Store {
  /**
   * Adds lines of one or more jobs, all or none, and resolves once they would survive a power cut. A line whose id is
   * already there is passed over; two different lines with one `job` and `seq` are refused.
   */
  append(lines: readonly LogLine[]): Promise<Outcome>
  /** All lines of a job in the order of `seq`. An unknown job gives none. */
  read(job: string): Promise<FoundLog>
  /** Newest first. */
  jobs(): Promise<JobSummary[]>
  close(): Promise<void>
}
