/**
 * What stands between a job and a signature: open warnings, and values that rules still want. It never says that an
 * installation is safe; it says what the record lacks, and the competent person decides.
 */
import type { Checked, Finding, Missing } from "../facts/Finding"

export interface Readiness {
  /** No stop is open. Warnings and missing values are for the person to weigh. */
  mayBeSigned: boolean
  stops: readonly Finding[]
  warns: readonly Finding[]
  missing: readonly Missing[]
}

/** `isKept` says which findings were kept on purpose, with a reason. */
export const readyToSign = (checked: Checked, isKept: (finding: Finding) => boolean = () => false): Readiness => {
  const open = (severity: Finding["severity"]) =>
    checked.findings.filter((finding) => finding.severity === severity && !isKept(finding))
  const stops = open("stop")
  return { mayBeSigned: stops.length === 0, stops, warns: open("warn"), missing: checked.missing }
}
