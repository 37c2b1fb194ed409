/**
 * All that an export is made of: a job's log, the record it gives, what the rules say of it, and what was wrong with the
 * file. Whoever exports has the findings made; exports only write down.
 */
import type { Checked, Finding, Missing } from "../facts/Finding"
import type { JobRecord } from "../record/JobRecord"
import type { LogLine } from "../record/LogLine"
import { openWarnings } from "../record/warningKey"

export interface ExportedJob {
  lines: readonly LogLine[]
  record: JobRecord
  findings: readonly Finding[]
  /** Those of `findings` that are warnings and were neither put right nor kept with a reason. */
  open: readonly Finding[]
  missing: readonly Missing[]
  /** What was wrong with the job file, in plain words. Every export repeats it, so that a part never looks whole. */
  faults: readonly string[]
}

interface CheckedJob {
  lines: readonly LogLine[]
  record: JobRecord
  checked: Checked
  faults: readonly string[]
}

/** A job that was checked, as exports take it. */
export const exportedJob = ({ lines, record, checked, faults }: CheckedJob): ExportedJob => ({
  lines,
  record,
  findings: checked.findings,
  open: openWarnings(record, checked.findings),
  missing: checked.missing,
  faults,
})
