/** Findings as lines for a terminal, open ones first, and the exit status they give. */

import type { Finding } from "../facts/Finding"
import type { JobRecord } from "../record/JobRecord"
import { openWarnings } from "../record/warningKey"

const label = { stop: "STOP", warn: "warn", note: "note", ok: "ok" } as const

/** One line a finding: severity, part, words, clause, edition and how well the figure is known. */
export const showFinding = (finding: Finding): string => {
  const { standard, clause, edition } = finding.source
  const item = finding.item ? `${finding.item}: ` : ""
  return `${label[finding.severity].padEnd(5)}${item}${finding.shown} [${standard} ${edition}, ${clause}, ${finding.status}]`
}

/** 1 where a stop is open and was not kept with a reason, else 0. */
export const exitStatus = (record: JobRecord, findings: readonly Finding[]): 0 | 1 =>
  openWarnings(record, findings).some((finding) => finding.severity === "stop") ? 1 : 0
