/** Within which time a residual current device should trip. From memory throughout: nothing passes or fails on it. */
import type { Status } from "../facts/Finding"
import { rcdTimes } from "./tables/rcdTimes"

/** In milliseconds, both ends included; null for a multiple that nobody tests with. */
export const rcdTripMs = (
  type: "general" | "delayed",
  multiple: number,
): { leastMs: number; mostMs: number; status: Status } | null => {
  const row = rcdTimes.rows.find((one) => one.type === type && one.multiple === multiple)
  return row ? { leastMs: row.leastMs, mostMs: row.mostMs, status: rcdTimes.status } : null
}
