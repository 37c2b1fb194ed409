/**
 * Answers to a question for a time of day or a date, and a sentence that says outright when the test was. Nothing else is
 * ever read as a time, however much it looks like one.
 */
import type { Context, Interpretation } from "../facts/Interpretation"
import { isoDay, isoTime, parseLocal } from "./LocalDay"
import { readClock } from "./readClock"
import { readDate } from "./readDate"
import { isUnsure, timeWords } from "./TimeWords"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"

const asksClock = new Set(["time_of_test", "time"])
const asksDate = new Set(["date_of_test", "next_visit", "next_test"])

/** Whether the open question wants a time of day or a date. */
export const isTimeAsked = (context: Context): boolean =>
  asksClock.has(context.asked ?? "") || asksDate.has(context.asked ?? "")

/** The time or date that was said, a question, or null when nothing in the words is one. */
export function readTimes(utterance: Utterance, context: Context): Interpretation | null {
  const now = parseLocal(context.now)
  const read = (words: readonly string[]) =>
    asksClock.has(context.asked ?? "")
      ? clock(words, now)
      : now
        ? date(words, now, context.asked === "date_of_test")
        : null
  const last = lastAfterRepair(utterance)
  const whole = read(ofHourBefore(last, utterance) ?? last)
  const found = whole?.facts.length ? whole : (fromFirstClause(utterance, read) ?? whole)
  if (!found) return eitherOf(utterance, read)
  if (isUnsure(utterance) && found.facts.length > 0)
    return ask([String((found.facts[0] as { value: unknown }).value)], "that was not sure")
  return found
}

const testedAt =
  /^(?:(?:so|and|right|ok|okay|i|we|i've|it|that|was|the) )*(?:tested(?: it| this one| that)?|test (?:was|done|was done)|time of (?:the )?test(?: was| is)?) at /
/** Words and marks that a bare number lacks: "ten past four", "half ten", "16:10". */
const faceMarks = /\b(past|to|half|quarter|o'clock|am|pm|noon|midday|morning|afternoon|evening)\b|\d:\d\d/

/** "tested at ten past four": the time of the test, told unasked. A bare number may be anything and is none. */
export function readTimeOfTest(utterance: Utterance, context: Context): Interpretation | null {
  if (!utterance.words.includes("at")) return null
  const text = utterance.words.join(" ")
  const lead = testedAt.exec(text)
  if (!lead || !faceMarks.test(text.slice(lead[0].length))) return null
  const from = lead[0].trim().split(" ").length
  const isParted = utterance.tokens.slice(0, -1).some((token) => isEdgeGap(token.after))
  if (isParted || utterance.numbers.some((one) => one.shape === "decimal")) return null
  const rest = { ...utterance, words: utterance.words.slice(from), tokens: utterance.tokens.slice(from) }
  return clock(timeWords(rest), parseLocal(context.now))
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

/** "half ten this morning, near the church": the time is said, and what follows the pause holds no figure. */
function fromFirstClause(
  utterance: Utterance,
  read: (words: readonly string[]) => Interpretation | null,
): Interpretation | null {
  const { tokens, words, numbers, islands } = utterance
  const end = tokens.findIndex((token) => isEdgeGap(token.after)) + 1
  if (end === 0 || end === tokens.length || numbers.some((one) => one.to > end)) return null
  if (islands.some((one) => one.to > end && /^(guards|repairs|answers)\./.test(one.rule))) return null
  const found = read(timeWords({ ...utterance, words: words.slice(0, end), tokens: tokens.slice(0, end) }))
  return found && found.facts.length > 0 ? found : null
}

/** "either Monday or Tuesday, she'll ring", "five years or ten": one of two, and nobody said which. */
function eitherOf(
  utterance: Utterance,
  read: (words: readonly string[]) => Interpretation | null,
): Interpretation | null {
  const { tokens, words } = utterance
  const end = tokens.findIndex((token) => isEdgeGap(token.after)) + 1 || words.length
  const first = timeWords({ ...utterance, words: words.slice(0, end), tokens: tokens.slice(0, end) })
  const from = first[0] === "either" ? 1 : 0
  const or = first.indexOf("or")
  if (or <= from) return null
  const halves = [first.slice(from, or), first.slice(or + 1)].map(read)
  const values = halves.flatMap((one) => one?.facts.map((fact) => String((fact as { value: unknown }).value)) ?? [])
  return values.length > 0 ? ask(values, "two were said") : null
}

/** "ten o'clock, no, quarter past": where the repair leaves the hour out, it is the one that was said. */
function ofHourBefore(last: readonly string[], utterance: Utterance): string[] | null {
  if (!/^(quarter|half|\d{1,2}) (past|to)$/.test(last.join(" "))) return null
  const hour = /^(\d{1,2})(?: o'clock)? (?:no|sorry|wait)\b/.exec(timeWords(utterance).join(" "))
  return hour ? [...last, hour[1]!] : null
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
