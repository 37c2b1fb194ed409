/**
 * Days in a query: "last week", "in February", "from 2 March to 5 March", "since Monday", "3/2/2026". chrono-node reads
 * the single day, in British order; weeks and months are widened here, since it gives one day of them. Searches look
 * back, so a day that has not been yet this year is last year's.
 */
import * as chrono from "chrono-node"
import { addDays, addMonths, isoDay, type LocalDay, weekdayOf } from "../interpret/LocalDay"
import type { Cursor } from "./Cursor"
import { numberWords } from "./numberWords"

/** Days as "2026-03-02", both included; null is open. */
export type DaysReading = { from: string | null; to: string | null } | { because: string }

const month =
  "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)"
const weekday = "(?:mon|tues|wednes|thurs|fri|satur|sun)day"
const few = "(?:\\d{1,3}|a|an|one|two|three|four|five|six|ten|twelve)"
const numeric = "\\d{4}-\\d{2}-\\d{2}|\\d{1,2}[/.]\\d{1,2}[/.](?:\\d{4}|\\d{2})|\\d{1,2}/\\d{1,2}"
const named = `\\d{1,2}(?:st|nd|rd|th)?(?: of)? ${month}(?:,? \\d{4})?|${month} \\d{1,2}(?:st|nd|rd|th)?(?:,? \\d{4})?`
const day = `today|yesterday|(?:last |this |on )?${weekday}|${few} (?:days?|weeks?|months?|years?) ago|${numeric}|${named}`
/** "May" and "march" are words too, so a bare month needs its year, or a word that makes it a time. */
const period = `(?:this|last) (?:week|month|year)|${month} \\d{4}|(?:this|last|in|during|since|before|until) (?:${month}|20\\d{2})|(?:january|february|april|june|july|august|september|october|november|december)`
const span = `(?:the )?(?:last|past) ${few} (?:days|weeks|months)|(?:the )?last fortnight`
const since = "from|between|since|after|before|until|till|up to|on|in|during|to"

interface Days {
  from: LocalDay
  to: LocalDay
}

/** Reads days at the cursor; null where there are none. */
export const readDays = (cursor: Cursor, today: LocalDay): DaysReading | null =>
  cursor.attempt(() => {
    const spanning = cursor.take(span)
    if (spanning) return inWords(lastSpan(spanning[0], today))
    const leading = /^(in|during|since|before|until) /.exec(cursor.text.slice(cursor.at))?.[1]
    const bound = cursor.attempt(() => takeBound(cursor))
    const first = takeDays(cursor, today, leading)
    if (first === null) return null
    if ("because" in first) return first
    const joined = bound === null || bound === "from" || bound === "between"
    const second = joined
      ? cursor.attempt(() => (cursor.take("to|until|till|and|-|–") ? takeDays(cursor, today) : null))
      : null
    if (second && "because" in second) return second
    if (second) return inWords({ from: first.from, to: second.to })
    return bounded(bound, first)
  })

/** The word that says on which side of a day to look; it is only that where a day follows. */
const takeBound = (cursor: Cursor): string | null => {
  const word = cursor.take(since)?.[0].trim()
  if (!word) return null
  const after = new RegExp(`^(?:the )?(?:${day}|${period}|${month}|20\\d{2})(?![\\p{L}\\p{N}])`, "u")
  return after.test(cursor.text.slice(cursor.at)) ? word : null
}

const bounded = (bound: string | null, { from, to }: Days): DaysReading => {
  if (bound === "since" || bound === "from") return { from: isoDay(from), to: null }
  if (bound === "after") return { from: isoDay(addDays(to, 1)), to: null }
  if (bound === "before") return { from: null, to: isoDay(addDays(from, -1)) }
  if (bound === "until" || bound === "till" || bound === "up to" || bound === "to")
    return { from: null, to: isoDay(to) }
  return inWords({ from, to })
}

const inWords = ({ from, to }: Days): DaysReading =>
  isoDay(from) > isoDay(to) ? { because: "the second day is before the first" } : { from: isoDay(from), to: isoDay(to) }

/** One day, or the days of one week, month or year. `leading` is the word that stood before it. */
const takeDays = (cursor: Cursor, today: LocalDay, leading?: string): Days | { because: string } | null => {
  const found =
    cursor.take(day) ?? cursor.take(period) ?? (leading === undefined ? null : cursor.take(`${month}|20\\d{2}`))
  if (!found) return null
  const text = found[0].trim()
  const widened = widen(text, today)
  if (widened) return widened
  const one = readDay(text, today)
  return one ? { from: one, to: one } : { because: "there is no such day" }
}

const lastOfMonth = (first: LocalDay) => addDays(addMonths(first, 1), -1)
const monthOf = (year: number, number: number): Days => {
  const from = { year, month: number, day: 1 }
  return { from, to: lastOfMonth(from) }
}
const yearOf = (year: number): Days => ({ from: { year, month: 1, day: 1 }, to: { year, month: 12, day: 31 } })

/** Weeks begin on Monday. Null where the text is a single day. */
const widen = (text: string, today: LocalDay): Days | null => {
  const past = text.startsWith("last ") ? 1 : 0
  if (/^(this|last) week$/.test(text)) {
    const monday = addDays(today, -((weekdayOf(today) + 6) % 7) - 7 * past)
    return { from: monday, to: addDays(monday, 6) }
  }
  if (/^(this|last) month$/.test(text)) {
    const { year, month: number } = addMonths({ ...today, day: 1 }, -past)
    return monthOf(year, number)
  }
  if (/^(this|last) year$/.test(text)) return yearOf(today.year - past)
  const alone = new RegExp(`^(?:(?:this|last|in|during|since|before|until) )?(${month})(?: (\\d{4}))?$`).exec(text)
  if (alone) {
    const number = "janfebmaraprmayjunjulaugsepoctnovdec".indexOf(alone[1]!.slice(0, 3)) / 3 + 1
    const year = alone[2] ? Number(alone[2]) : number > today.month ? today.year - 1 : today.year
    return monthOf(year, number)
  }
  const year = /^(?:\D* )?(20\d{2})$/.exec(text)
  return year ? yearOf(Number(year[1])) : null
}

/** "Last 7 days" is today and the six before it. */
const lastSpan = (text: string, today: LocalDay): Days => {
  if (text.includes("fortnight")) return { from: addDays(today, -13), to: today }
  const [, word = "1", unit = "days"] = /(\S+) (days|weeks|months)/.exec(text) ?? []
  const amount = /^an?$/.test(word) ? 1 : (numberWords[word] ?? Number(word))
  if (unit === "months") return { from: addDays(addMonths(today, -amount), 1), to: today }
  return { from: addDays(today, 1 - amount * (unit === "weeks" ? 7 : 1)), to: today }
}

const readDay = (text: string, today: LocalDay): LocalDay | null => {
  const iso = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  const reference = new Date(Date.UTC(today.year, today.month - 1, today.day, 12))
  const plain = text.replace(/^on /, "").replace(/ of /, " ")
  const found = chrono.en.GB.parse(plain, { instant: reference, timezone: 0 })[0]
  if (!found || found.text.length < plain.length) return null
  const parts = { year: found.start.get("year")!, month: found.start.get("month")!, day: found.start.get("day")! }
  // Without a year or with a weekday alone chrono takes the nearest, which may still be to come.
  const isToCome = isoDay(parts) > isoDay(today)
  if (iso || !isToCome) return parts
  if (new RegExp(`^(?:last |this |on )?${weekday}$`).test(text)) return addDays(parts, -7)
  return found.start.isCertain("year") ? parts : { ...parts, year: parts.year - 1 }
}
