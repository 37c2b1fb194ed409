/** A job file's text as its log, its record, and what the rules say of it: all that checking and exporting start from. */

import type { ExportedJob } from "../exports/ExportedJob"
import type { Checked } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { Situation } from "../facts/Situation"
import type { JobRecord } from "../record/JobRecord"
import { readJobFile } from "../record/jobFile"
import { project } from "../record/project"
import { toSituation } from "../record/toSituation"
import { openWarnings } from "../record/warningKey"

/** Refuses a file of which no line can be read; of a damaged one, what could be read is still checked. */
export const readCheckedJob = (
  text: string,
  check: (situation: Situation, record: JobRecord) => Checked,
): Outcome<ExportedJob> => {
  const file = readJobFile(text)
  if (!file.ok) return file
  const { lines, faults } = file.value
  if (lines.length === 0) return refuse("The job file holds no line that could be read.")
  const record = project(lines)
  const { findings, missing } = check(toSituation(record), record)
  return done({ lines, record, findings, open: openWarnings(record, findings), missing, faults })
}
