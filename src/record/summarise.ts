/**
 * A job's log in one row, the same for every store. What the office adds to a job does not take it up again: otherwise
 * the worker's page would open with it and speak.
 */
import { type LogLine, officeRoles } from "./LogLine"
import type { JobSummary } from "./Store"

export const summarise = (lines: readonly LogLine[]): JobSummary | null => {
  const opened = lines.find((line) => line.type === "job_opened")
  const last = lines.at(-1)
  if (!opened || !last) return null
  const { job, place, at } = opened
  const lastInField = lines.findLast((line) => !officeRoles.includes(line.by))
  return { job, place, openedAt: at, lastAt: last.at, lines: lines.length, inHand: lastInField?.type !== "put_away" }
}

export const newestFirst = (a: JobSummary, b: JobSummary) => b.lastAt.localeCompare(a.lastAt)
