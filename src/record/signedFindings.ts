/** Every finding that is not fine, as it stands when somebody signs, with the reason where it was kept. */
import type { Finding } from "../facts/Finding"
import type { JobRecord } from "./JobRecord"
import type { SignedFinding } from "./LogLine"
import { warningKey } from "./warningKey"

export const signedFindings = (record: JobRecord, findings: readonly Finding[]): SignedFinding[] =>
  findings
    .filter((finding) => finding.severity !== "ok")
    .map((finding) => {
      const kept = record.warnings.find((one) => one.warning === warningKey(finding))?.kept
      const { rule, item, severity, shown } = finding
      return { rule, ...(item && { item }), severity, words: shown, ...(kept != null && { kept }) }
    })
