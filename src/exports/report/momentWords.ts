/** Times in the report, as the clock on the wall stood where the line was written. No clock or time zone is looked at. */
import { showDate } from "../../facts/showDate"

/** "2 Mar 2026" of an ISO time. */
const dayWords = (at: string): string => showDate(at.slice(0, 10))

const zoneOf = (at: string) => {
  const zone = /(?:Z|[+-]\d\d:?\d\d)$/i.exec(at)?.[0] ?? ""
  return /^(Z|[+-]00:?00)$/i.test(zone) ? "UTC" : `UTC${zone}`
}

/** "2 Mar 2026, 09:41 UTC+01:00" of an ISO time with its offset. */
export const momentWords = (at: string): string => `${dayWords(at)}, ${at.slice(11, 16)} ${zoneOf(at)}`

/** "09:41", with the day in front where it is not the given one. */
export const clockWords = (at: string, day: string | null): string =>
  day !== null && at.slice(0, 10) === day.slice(0, 10) ? at.slice(11, 16) : `${dayWords(at)}, ${at.slice(11, 16)}`
