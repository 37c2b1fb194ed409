/** Answers to a question for a time of day or a date. Nothing else is ever read as a time, however much it looks like one. */
import type { Context, Interpretation } from "../facts/Interpretation"
import { isoDay, isoTime, parseLocal } from "./LocalDay"
import { readClock } from "./readClock"
import { readDate } from "./readDate"
import { isUnsure, timeWords } from "./TimeWords"
import type { Utterance } from "./Utterance"

const asksClock = new Set(["time_of_test", "time"])
const asksDate = new Set(["date_of_test", "next_visit", "next_test"])

/** Whether the open question wants a time of day or a date. */
export const isTimeAsked = (context: Context): boolean =>
  asksClock.has(context.asked ?? "") || asksDate.has(context.asked ?? "")

/** The time or date that was said, a question, or null when nothing in the words is one. */
export function readTimes(utterance: Utterance, context: Context): Interpretation | null {
  const words = lastAfterRepair(utterance)
  const now = parseLocal(context.now)
  const found = asksClock.has(context.asked ?? "")
    ? clock(words, now)
    : now
      ? date(words, now, context.asked === "date_of_test")
      : null
  if (!found) return null
  if (isUnsure(utterance) && found.facts.length > 0)
    return ask([String((found.facts[0] as { value: unknown }).value)], "that was not sure")
  return found
}

const ask = (candidates: readonly string[], because: string): Interpretation => ({
  facts: [],
  ask: { kind: "time", ...(candidates.length > 0 ? { candidates: [...candidates] } : {}), because },
  command: null,
})

function clock(words: readonly string[], now: ReturnType<typeof parseLocal>): Interpretation | null {
  const found = readClock(words, now)
  if (!found) return null
  if (!("at" in found)) return ask(found.candidates, found.because)
  return { facts: [{ kind: "time", value: isoTime(found.at), unit: "time" }], ask: null, command: null }
}

function date(
  words: readonly string[],
  now: NonNullable<ReturnType<typeof parseLocal>>,
  isPast: boolean,
): Interpretation | null {
  const found = readDate(words, now, isPast)
  if (!found) return null
  if (!("day" in found)) return ask(found.candidates, found.because)
  return { facts: [{ kind: "time", value: isoDay(found.day), unit: "date" }], ask: null, command: null }
}

/** "half two, no, half three": only what follows the last repair counts. */
function lastAfterRepair(utterance: Utterance): string[] {
  const mark = utterance.islands.findLast(
    (one) =>
      (one.rule.startsWith("repairs.") || one.rule === "answers.deny") &&
      one.from > 0 &&
      one.to < utterance.tokens.length,
  )
  const from = mark?.to ?? 0
  return timeWords({ ...utterance, words: utterance.words.slice(from), tokens: utterance.tokens.slice(from) })
}
