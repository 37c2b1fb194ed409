/**
 * A name for one warning about one set of entries. When an entry behind it changes, the name changes too, so that a
 * warning that was kept on purpose comes back for the new value.
 */
import type { Finding } from "../facts/Finding"
import type { JobRecord } from "./JobRecord"

/** Findings are never changed, and each turn of a long job asks for the names of all of them. */
const keys = new WeakMap<Finding, string>()

/** The rule, the item and the entries it rests on. */
export const warningKey = (finding: Finding): string => {
  const known = keys.get(finding)
  if (known !== undefined) return known
  const key = [finding.rule, finding.item ?? "job", ...finding.rests].join("|")
  keys.set(finding, key)
  return key
}

/** Whether a finding has to be spoken. */
export const isWarning = (finding: Finding) => finding.severity === "stop" || finding.severity === "warn"

/** The reason for which a warning was kept on purpose, or null where it was not. */
export const keptReason = (record: JobRecord, finding: Finding): string | null => {
  const key = warningKey(finding)
  return record.warnings.find((one) => one.warning === key)?.kept ?? null
}

/** Whether a warning was kept on purpose, with a reason. */
export const isKept = (record: JobRecord, finding: Finding) => keptReason(record, finding) !== null

/** Warnings that were kept on purpose. */
export const keptWarnings = (record: JobRecord, findings: readonly Finding[]) =>
  findings.filter((finding) => isWarning(finding) && isKept(record, finding))

/** Warnings that hold now and were neither put right nor kept with a reason. */
export const openWarnings = (record: JobRecord, findings: readonly Finding[]) =>
  findings.filter((finding) => isWarning(finding) && !isKept(record, finding))
