/** Deletes the clips that are past their time, at each start. Rows tell which jobs are signed off; no log is read. */
import type { ClipStore } from "../../record/Clip"
import type { Store } from "../../record/Store"
import { type KeepFor, pastKeeping } from "./keepFor"

/** Gives how many were deleted. `now` in ms since 1970. */
export const tidySound = async (clips: ClipStore, store: Store, keepFor: KeepFor, now: number): Promise<number> => {
  const notes = await clips.notes()
  if (notes.length === 0) return 0
  // A job whose row is lost is still a job, and nobody knows whether it was signed off.
  const [{ rows, stale }, rowless] = await Promise.all([store.rows(), store.rowless()])
  const known = new Set(rows.map((row) => row.job))
  const unsure = [...stale, ...rowless].filter((job) => !known.has(job)).map((job) => ({ job, signedOff: false }))
  const past = pastKeeping(notes, keepFor, [...rows, ...unsure], now)
  const dropped = past.length === 0 || (await clips.drop(past)).ok
  return dropped ? past.length : 0
}
