/**
 * A job's log in one row, the same for every store. A job that the office was the last to work on is in nobody's hand:
 * otherwise the worker's page would open with it and speak.
 */
import { type LogLine, officeRoles } from "./LogLine"
import type { JobSummary } from "./Store"

/** Stands for the place where the line that says it was lost: such a job is still shown, since its values are there. */
const placeLost = "Place not known, the first line is lost"

export const summarise = (lines: readonly LogLine[]): JobSummary | null => {
  const opened = lines.find((line) => line.type === "job_opened")
  const [first, last] = [opened ?? lines[0], lines.at(-1)]
  if (!first || !last) return null
  const inHand = opened !== undefined && last.type !== "put_away" && !officeRoles.includes(last.by)
  const place = opened?.place ?? placeLost
  return { job: first.job, place, openedAt: first.at, lastAt: last.at, lines: lines.length, inHand }
}

export const newestFirst = (a: JobSummary, b: JobSummary) => b.lastAt.localeCompare(a.lastAt)
