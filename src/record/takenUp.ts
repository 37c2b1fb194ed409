/** Whether a job is in hand on this device, which a log that came in as a file cannot tell by itself. */
import type { Source } from "./Source"
import type { JobSummary } from "./Store"

/** A job whose last lines came out of a file is in hand elsewhere, if anywhere, until somebody carries on with it here. */
export const takenUp = (jobs: readonly JobSummary[], sources: readonly Source[]): JobSummary[] => {
  const cameIn = new Map<string, number>()
  for (const { job, lines, linesAfter } of sources)
    if (lines > 0) cameIn.set(job, Math.max(linesAfter, cameIn.get(job) ?? 0))
  return jobs.map((one) => ({ ...one, inHand: one.inHand && one.lines > (cameIn.get(one.job) ?? 0) }))
}
