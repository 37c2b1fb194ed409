/**
 * A date as it is said, British order: "Friday week", "a week on Tuesday", "third of April twenty thirty", "ten years".
 * Relative days are worked out here, since date libraries get the British ones silently wrong; chrono-node reads only
 * calendar dates with the month by name, from text in which numbers and years are figures already.
 */
import * as chrono from "chrono-node"
import { addDays, addMonths, isoDay, isRealDay, type LocalDay, type LocalMoment, weekdayOf } from "./LocalDay"

export type DateReading = { day: LocalDay } | { candidates: readonly string[]; because: string } | null

const weekdays = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"]
const shortMonths = "jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec"
const weekdayShape = "(sun|mon|tues|wednes|thurs|fri|satur)day"
/** "not today, tomorrow" */
const denied = new RegExp(`^(not|no) (today|tomorrow|yesterday|${weekdayShape}) (?=\\S)`)
const monthShape = `(january|february|march|april|may|june|july|august|september|october|november|december|${shortMonths})`

/** Reads the words of a date; `isPast` when it is of something that was done. Null when they hold none. */
export function readDate(words: readonly string[], now: LocalMoment, isPast: boolean): DateReading {
  const text = joinYears(words.join(" ")).replace(denied, "")
  const dated = /^(\d{1,2})th of (\d{1,2})th (this year|\d{4}|\d{2})$/.exec(text)
  if (dated) {
    const year = dated[3] === "this year" ? now.year : Number(dated[3]!.padStart(4, "20"))
    return real({ day: Number(dated[1]), month: Number(dated[2]), year })
  }
  if (/^\d{1,2}th (of )?\d{1,2}th$/.test(text)) return { candidates: [], because: "the month was not named" }
  const found =
    readRelative(text, now, isPast) ??
    readWeekday(text, now, isPast) ??
    readNumeric(text, now, isPast) ??
    readNamed(text, now, isPast)
  if (!found || !("day" in found)) return found
  const isLater = isoDay(found.day) > isoDay(now)
  if (isPast && isLater) return { candidates: [isoDay(found.day)], because: "that day has not been yet" }
  if (!isPast && isoDay(found.day) <= isoDay(now))
    return { candidates: [isoDay(found.day)], because: "that day has been" }
  return found
}

/** "20 30" and "two thousand and 30" after a month become 2030. */
const joinYears = (text: string): string =>
  text
    .replace(
      /\b(2 thousand|two thousand)( and)? (\d{1,2})\b/g,
      (_, __, ___, year: string) => `20${year.padStart(2, "0")}`,
    )
    .replace(/\b20 (oh )?(\d{1,2})\b/g, (_, __, year: string) => `20${year.padStart(2, "0")}`)

const amountOf = (word: string): number => (/^(a|an|one)$/.test(word) ? 1 : word === "couple" ? 2 : Number(word))

function readRelative(text: string, now: LocalMoment, isPast: boolean): DateReading {
  if (
    /^(today|now|just now|this (morning|afternoon|evening)|(on )?this day)$/.test(
      text.replace(/,.*| this time$/g, ""),
    ) ||
    /^today\b/.test(text)
  )
    return isPast ? { day: now } : { candidates: [], because: "today is no later date" }
  if (/^yesterday\b/.test(text)) return { day: addDays(now, -1) }
  if (/^day before yesterday\b/.test(text)) return { day: addDays(now, -2) }
  if (/^tomorrow week$/.test(text)) return { day: addDays(now, 8) }
  if (/^tomorrow fortnight$/.test(text)) return { day: addDays(now, 15) }
  if (/^tomorrow( morning| afternoon)?$/.test(text)) return { day: addDays(now, 1) }
  if (/^day after tomorrow$/.test(text)) return { day: addDays(now, 2) }
  if (/^(a )?week today$|^today week$|^(a )?week from today$/.test(text)) return { day: addDays(now, 7) }
  if (/^(a )?(year|month) (today|from today|from now|this day)$|^this day next year$/.test(text))
    return { day: addMonths(now, text.includes("month") ? 1 : 12) }
  if (/^(a )?fortnight today$|^today fortnight$/.test(text)) return { day: addDays(now, 14) }
  if (/^(a )?week (tomorrow|from tomorrow)$/.test(text)) return { day: addDays(now, 8) }
  if (
    /^(next|this|on next) (week|month|year)$|\bend of\b|\bsome ?time\b|\bcouple\b|\bfew\b|\bweek after next\b|^\d{4}$|^\d{1,2}th$/.test(
      text,
    )
  )
    return { candidates: [], because: "the day was not said" }
  return readInterval(text, now, isPast)
}

function readInterval(text: string, now: LocalMoment, isPast: boolean): DateReading {
  const match =
    /^(?:in |after |within )?(\d{1,3}|a|an)? ?(day|week|fortnight|month|year)s?'?(?: (and a half))?(?: (time|from now|from today|ago|hence|to (?:the )?day))?$/.exec(
      text,
    )
  if (!match || (!match[1] && match[2] !== "fortnight")) return null
  if (match[3] && match[2] !== "year") return { candidates: [], because: "half of what was not said" }
  const amount = amountOf(match[1] ?? "a")
  const sign = match[4] === "ago" ? -1 : 1
  if ((sign === 1) === isPast) return null
  const months = match[2] === "year" ? amount * 12 + (match[3] ? 6 : 0) : match[2] === "month" ? amount : 0
  const days =
    match[2] === "day" ? amount : match[2] === "week" ? amount * 7 : match[2] === "fortnight" ? amount * 14 : 0
  return { day: months > 0 ? addMonths(now, sign * months) : addDays(now, sign * days) }
}

function readWeekday(text: string, now: LocalMoment, isPast: boolean): DateReading {
  const name = new RegExp(`\\b${weekdayShape}s?\\b`).exec(text)?.[0].replace(/s$/, "")
  if (!name) return null
  const rest = text
    .replace(name, "")
    .replace(/\bon\b/g, "")
    .replace(/\s+/g, " ")
    .trim()
  const ahead = (weekdays.indexOf(name) - weekdayOf(now) + 7) % 7 || 7
  const behind = (weekdayOf(now) - weekdays.indexOf(name) + 7) % 7 || 7
  if (rest === "week" || rest === "a week" || rest === "week on") return { day: addDays(now, ahead + 7) }
  // "Friday first" is the one that comes first.
  if (/^(first|1th|1st)$/.test(rest) && !isPast) return { day: addDays(now, ahead) }
  if (rest === "fortnight" || rest === "a fortnight") return { day: addDays(now, ahead + 14) }
  if (rest === "just" && isPast) return { day: addDays(now, -behind) }
  if (rest === "last")
    return behind <= 2
      ? { candidates: [isoDay(addDays(now, -behind))], because: "this week's or last week's" }
      : { day: addDays(now, -behind) }
  if (rest === "next")
    return {
      candidates: [isoDay(addDays(now, ahead)), isoDay(addDays(now, ahead + 7))],
      because: "this one or the one after",
    }
  if (rest === "" || rest === "this" || /^(this )?(coming|morning|afternoon)$/.test(rest))
    return { day: isPast ? addDays(now, -behind) : addDays(now, ahead) }
  return null
}

/** Figures only: day, month, year. */
function readNumeric(text: string, now: LocalMoment, isPast: boolean): DateReading {
  const iso = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.replace(/ /g, "-"))
  if (iso) return real({ year: Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]) })
  const match = /^(\d{1,2})[/. -](\d{1,2})(?:[/. -](\d{2}|\d{4}))?$/.exec(text)
  if (!match) return null
  const day = { day: Number(match[1]), month: Number(match[2]) }
  if (match[3]) return real({ ...day, year: match[3].length === 2 ? 2000 + Number(match[3]) : Number(match[3]) })
  return nearest(day, now, isPast)
}

/** A month by name: chrono-node reads it, and nothing in the text may be left over. */
function readNamed(text: string, now: LocalMoment, isPast: boolean): DateReading {
  if (!new RegExp(`\\b${monthShape}\\b`).test(text)) return null
  const moved = /\b(next|this) year$/.exec(text)
  const plain = text
    .replace(/\b(next|this) year$/, "")
    .replace(/\b(\d{1,2})(st|nd|rd|th)\b/g, "$1")
    .replace(/\bof\b/g, "")
    .replace(/\s+/g, " ")
    .trim()
  const reference = new Date(Date.UTC(now.year, now.month - 1, now.day, 12))
  const result = chrono.en.GB.parse(plain, { instant: reference, timezone: 0 })[0]
  if (!result?.start.isCertain("day") || !result.start.isCertain("month"))
    return { candidates: [], because: "the day was not clear" }
  const rest = (plain.slice(0, result.index) + plain.slice(result.index + result.text.length)).replace(
    new RegExp(`\\b(on|${weekdayShape})\\b|[ ,]`, "g"),
    "",
  )
  if (rest !== "") return { candidates: [], because: "some of the date was not understood" }
  const day = { day: result.start.get("day")!, month: result.start.get("month")! }
  if (moved && !result.start.isCertain("year")) return real({ ...day, year: now.year + (moved[1] === "next" ? 1 : 0) })
  return result.start.isCertain("year") ? real({ ...day, year: result.start.get("year")! }) : nearest(day, now, isPast)
}

/** A date without a year: the last such day, or the next. */
function nearest(day: Omit<LocalDay, "year">, now: LocalMoment, isPast: boolean): DateReading {
  const thisYear = { ...day, year: now.year }
  const isLater = isoDay(thisYear) > isoDay(now)
  const year = isPast ? (isLater ? now.year - 1 : now.year) : isLater ? now.year : now.year + 1
  return real({ ...day, year })
}

const real = (day: LocalDay): DateReading =>
  isRealDay(day) ? { day } : { candidates: [], because: "there is no such day" }
