/**
 * A job's log in one row, the same for every store. A job that the office was the last to work on is in nobody's hand:
 * otherwise the worker's page would open with it and speak.
 */
import { type LogLine, officeRoles } from "./LogLine"
import type { JobSummary } from "./Store"

export const summarise = (lines: readonly LogLine[]): JobSummary | null => {
  const opened = lines.find((line) => line.type === "job_opened")
  const last = lines.at(-1)
  if (!opened || !last) return null
  const { job, place, at } = opened
  const inHand = last.type !== "put_away" && !officeRoles.includes(last.by)
  return { job, place, openedAt: at, lastAt: last.at, lines: lines.length, inHand }
}

export const newestFirst = (a: JobSummary, b: JobSummary) => b.lastAt.localeCompare(a.lastAt)
