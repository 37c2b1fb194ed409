/** A job as the desk works on it: its log, the record it gives, what the rules say, and what was lost on the way. */
import type { Checked } from "../facts/Finding"
import type { Situation } from "../facts/Situation"
import type { JobRecord } from "../record/JobRecord"
import type { LogLine } from "../record/LogLine"
import { project } from "../record/project"
import { toSituation } from "../record/toSituation"
import { type Trust, trustOf } from "./trust"

export interface ReviewedJob {
  /** In the order of `seq`. */
  lines: readonly LogLine[]
  record: JobRecord
  checked: Checked
  /** Stored lines that could not be read. */
  damaged: number
  /** How far the log can be relied on, with what was wrong with the files that lines came from. */
  trust: Trust
}

export type Check = (situation: Situation) => Checked

interface Found {
  lines: readonly LogLine[]
  damaged?: number
  faults?: readonly string[]
}

/** The job that a log gives. */
export const reviewJob = ({ lines, damaged = 0, faults = [] }: Found, check: Check): ReviewedJob => {
  const ordered = [...lines].sort((a, b) => a.seq - b.seq)
  const record = project(ordered)
  const trust = trustOf(ordered, faults, damaged)
  return { lines: ordered, record, checked: check(toSituation(record)), damaged, trust }
}
