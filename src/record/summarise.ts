/** A job's log in one row, the same for every store. */
import type { LogLine } from "./LogLine"
import type { JobSummary } from "./Store"

export const summarise = (lines: readonly LogLine[]): JobSummary | null => {
  const opened = lines.find((line) => line.type === "job_opened")
  const last = lines.at(-1)
  if (!opened || !last) return null
  const { job, place, at } = opened
  return { job, place, openedAt: at, lastAt: last.at, lines: lines.length, inHand: last.type !== "put_away" }
}

export const newestFirst = (a: JobSummary, b: JobSummary) => b.lastAt.localeCompare(a.lastAt)
