/** Every finding that is not fine, as it stands when somebody signs, with the reason where it was kept. */
import type { Finding } from "../facts/Finding"
import type { JobRecord } from "./JobRecord"
import type { SignedFinding } from "./LogLine"
import { keptReason } from "./warningKey"

export const signedFindings = (record: JobRecord, findings: readonly Finding[]): SignedFinding[] =>
  findings
    .filter((finding) => finding.severity !== "ok")
    .map((finding) => {
      const kept = keptReason(record, finding)
      const { rule, item, severity, shown } = finding
      return { rule, ...(item && { item }), severity, words: shown, ...(kept !== null && { kept }) }
    })
