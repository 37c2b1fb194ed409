/** `check JOB`: what the rules say about a job file as it stands. */
import type { Checked } from "../facts/Finding"
import { done, type Outcome } from "../facts/Outcome"
import type { Situation } from "../facts/Situation"
import { readCheckedJob } from "./readCheckedJob"
import { exitStatus, showFinding } from "./showFindings"

interface Printed {
  lines: string[]
  status: 0 | 1
}

/** Checks the text of a job file. Faults of the file are said first; what could be read is still checked. */
export const checkJobText = (
  text: string,
  asJson: boolean,
  check: (situation: Situation) => Checked,
): Outcome<Printed> => {
  const job = readCheckedJob(text, check)
  if (!job.ok) return job
  const { record, findings, open, missing, faults } = job.value
  const lines = asJson
    ? [
        ...faults.map((fault) => JSON.stringify({ fault })),
        ...findings.map((finding) => JSON.stringify({ finding, open: open.includes(finding) })),
        ...missing.map((one) => JSON.stringify({ missing: one })),
      ]
    : [
        ...faults.map((fault) => `fault ${fault}`),
        ...findings.map(showFinding),
        ...missing.map((one) => `asks ${one.item ? `${one.item}: ` : ""}${one.kind} (for ${one.rule})`),
        `${findings.length} findings, ${open.length} of them open warnings, ${missing.length} questions.`,
      ]
  return done({ lines, status: exitStatus(record, findings) })
}
