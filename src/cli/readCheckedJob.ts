/** A job file's text as its log, its record, and what the rules say of it: all that checking and exporting start from. */
import { type ExportedJob, exportedJob } from "../exports/ExportedJob"
import type { Checked } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { Situation } from "../facts/Situation"
import type { JobRecord } from "../record/JobRecord"
import { readJobFile } from "../record/jobFile"
import { project } from "../record/project"
import { toSituation } from "../record/toSituation"

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
  return done(exportedJob({ lines, record, checked: check(toSituation(record), record), faults }))
}
