/** Ends a read-back. What was read back and needed no yes is 'not challenged' once the worker goes on. */
import type { AcceptedHow } from "../record/LogLine"
import type { Turn } from "./Turn"

/** Marks entries as accepted that wait for it. Where nobody hears the loop, nothing is. */
export const accept = (turn: Turn, entries: readonly string[], how: AcceptedHow): void => {
  if (turn.state.unheard) return
  for (const entry of entries) {
    const held = turn.state.record.entries.find((one) => one.entry === entry)
    if (held && held.accepted === null && held.withdrawn === null) turn.add({ type: "accepted", entry, how })
  }
}

/** The worker goes on: routine values count as not challenged, and nothing is read back any more. */
export const settle = (turn: Turn): void => {
  const entries = turn.state.readBack?.entries ?? []
  const routine = entries.filter((entry) => !turn.state.record.entries.find((held) => held.entry === entry)?.needsYes)
  accept(turn, routine, "not_challenged")
  turn.set({ readBack: null })
}
