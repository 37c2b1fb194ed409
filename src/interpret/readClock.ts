/**
 * A time of day as it is said: "half two", "ten to three", "quarter of three", "fourteen thirty". Of morning and
 * afternoon only the one is taken that lies behind the worker and inside working hours; otherwise it asks.
 */
import { isoTime, type LocalMoment } from "./LocalDay"

/** Working hours in minutes since midnight; common practice, no source. */
const dayBegins = 7 * 60
const dayEnds = 21 * 60

export type ClockReading = { at: number } | { candidates: readonly string[]; because: string } | null

interface Face {
  /** 1 to 12, or up to 23 when it was said on the 24-hour clock. */
  hour: number
  minute: number
  half: "am" | "pm" | null
}

/** Reads the words of a time of day. Null when they hold none. */
export function readClock(words: readonly string[], now: LocalMoment | null): ClockReading {
  const text = words.join(" ")
  const ago = readAgo(text, now)
  if (ago) return ago
  const half = halfOf(text)
  const core = text
    // The old way of "twenty-five past".
    .replace(/\b5 and 20 (to|past)\b/g, "25 $1")
    .replace(/\b(in )?(the |this )?(morning|afternoon|evening|tonight|today)\b/g, "")
    .replace(/\b(a\.?m|p\.?m|am|pm)\b/g, "")
    .replace(/\b(at|on|this|just|dead|bang|spot|sharp|prompt|dot)\b/g, "")
    .replace(/\s+/g, " ")
    .trim()
  if (/^(now|right now|(very )?(minute|moment|second))$/.test(core) || (core === "" && /\bjust\b/.test(text)))
    return now ? { at: now.minutes } : null
  if (/^(noon|midday|twelve noon|12 noon)$/.test(core)) return { at: 12 * 60 }
  if (/\b(some ?time|first thing|back of|lunch|lunchtime|dinner|dinnertime|tea|teatime|breakfast|break)\b/.test(core))
    return { candidates: [], because: "the hour was not said" }
  if (/^(quarter|half) (to|past|after|of|till) (something|whatever|god knows)\b/.test(core))
    return { candidates: [], because: "the hour was not said" }
  const hanging = /^(\d{1,2}|quarter|half)( minutes?)? (to|past|after|of|till)$/.exec(core)
  if (hanging)
    return {
      candidates: now ? hangingCandidates(minutesOf(hanging[1]!), hanging[3]!, now) : [],
      because: "the hour was not said",
    }
  const face = readFace(core, half)
  if (face) return settle(face, now)
  return core === "" && half ? { candidates: [], because: "the hour was not said" } : null
}

const halfOf = (text: string): "am" | "pm" | null =>
  /\b(morning|am|a\.m)\b/.test(text) ? "am" : /\b(afternoon|evening|tonight|pm|p\.m)\b/.test(text) ? "pm" : null

const minutesOf = (word: string): number => (word === "quarter" ? 15 : word === "half" ? 30 : Number(word))

function hangingCandidates(minutes: number, side: string, now: LocalMoment): string[] {
  const minute = side === "past" || side === "after" ? minutes : 60 - minutes
  const hour = Math.floor((now.minutes - minute) / 60)
  return hour < 0 ? [] : [isoTime(hour * 60 + minute)]
}

function readFace(core: string, half: Face["half"]): Face | null {
  const past =
    /^(?:(\d{1,2})(?: minutes?)?|(a )?(quarter|half)) (past|after|to|of|till|before) (\d{1,2})(?: o'clock)?$/.exec(core)
  if (past) return faceAround(minutesOf(past[1] ?? past[3]!), past[4]!, Number(past[5]), half)
  const halfHour = /^half (\d{1,2})$/.exec(core)
  if (halfHour) return asFace(Number(halfHour[1]), 30, half)
  const figures = /^(\d{1,2})[:.](\d{2})$/.exec(core) ?? /^(\d{2})(\d{2})(?: hours| hrs)?$/.exec(core)
  if (figures) return asFace(Number(figures[1]), Number(figures[2]), half)
  const hundred = /^(?:oh |nought |zero )?(\d{1,2}) hundred(?: hours)?$/.exec(core)
  if (hundred) return asFace(Number(hundred[1]), 0, half)
  const pair = /^(oh |o |nought |zero )?(\d{1,2})(?: hours)? (oh |o |nought |zero )?(\d{1,2})$/.exec(core)
  if (pair && (Number(pair[4]) > 9 || pair[3])) return asFace(Number(pair[2]), Number(pair[4]), pair[1] ? "am" : half)
  const bare = /^(\d{1,2})(?: o'clock)?$/.exec(core)
  return bare ? asFace(Number(bare[1]), 0, half) : null
}

function faceAround(minutes: number, side: string, hour: number, half: Face["half"]): Face | null {
  if (minutes > 59 || hour > 12 || hour < 1) return null
  if (side === "past" || side === "after") return asFace(hour, minutes, half)
  return asFace(hour === 1 ? 12 : hour - 1, 60 - minutes, half)
}

const asFace = (hour: number, minute: number, half: Face["half"]): Face | null =>
  hour > 23 || minute > 59 ? null : { hour, minute, half }

/** Of the two times of a 12-hour face, the one that has been, in working hours. */
function settle({ hour, minute, half }: Face, now: LocalMoment | null): ClockReading {
  const inDay = (hours: number) => hours * 60 + minute
  const both = hour > 12 || hour === 0 ? [inDay(hour)] : [inDay(hour % 12), inDay((hour % 12) + 12)]
  const said = half === "am" ? both.slice(0, 1) : half === "pm" ? both.slice(-1) : both
  const fitting = said.filter(
    (at) => (half !== null || (at >= dayBegins && at <= dayEnds)) && (!now || at <= now.minutes),
  )
  if (fitting.length === 1) return { at: fitting[0]! }
  const because = fitting.length === 0 ? "that time has not been yet" : "morning or afternoon was not said"
  return { candidates: fitting.map(isoTime), because }
}

function readAgo(text: string, now: LocalMoment | null): ClockReading {
  const match =
    /^(?:(an|a|\d{1,2}) hours?(?: and (?:a half|(\d{1,2}) minutes?))?|half an hour|(?:a )?quarter of an hour|(\d{1,2}) minutes?|(\d{1,2}) mins?) (?:ago|back|since)$/.exec(
      text,
    )
  if (!match) return null
  if (!now) return { candidates: [], because: "the time now is not known" }
  const hours = match[1] ? (/^an?$/.test(match[1]) ? 1 : Number(match[1])) : 0
  const extra = / and a half/.test(text)
    ? 30
    : Number(match[2] ?? match[3] ?? match[4] ?? (text.startsWith("half") ? 30 : /^(a )?quarter/.test(text) ? 15 : 0))
  const at = now.minutes - hours * 60 - extra
  return at < 0 ? { candidates: [], because: "that was yesterday" } : { at }
}
