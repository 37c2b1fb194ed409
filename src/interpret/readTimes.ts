/** Times and dates. Placeholder shape is filled in below. */
import type { Context, Interpretation } from "../facts/Interpretation"
import type { Utterance } from "./Utterance"

/** Whether the open question wants a time of day or a date. */
export const isTimeAsked = (context: Context): boolean =>
  ["time_of_test", "date_of_test", "next_visit", "next_test", "time"].includes(context.asked ?? "")

/** The time or date that was said, a question, or null when nothing in the words is one. */
export function readTimes(_utterance: Utterance, _context: Context): Interpretation | null {
  return null
}
