/** Calendar sums on local days, without time zones: a day is a day, however long the clocks make it. */

export interface LocalDay {
  year: number
  /** 1 to 12. */
  month: number
  day: number
}

export interface LocalMoment extends LocalDay {
  /** Minutes since midnight. */
  minutes: number
}

/** Reads "2025-10-15T14:52…" as it stands on the worker's clock; null for anything else. */
export function parseLocal(iso: string | undefined): LocalMoment | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})/.exec(iso ?? "")
  if (!match) return null
  const [year, month, day, hours, minutes] = match.slice(1).map(Number) as [number, number, number, number, number]
  return { year, month, day, minutes: hours * 60 + minutes }
}

/** "2025-10-15" */
export const isoDay = ({ year, month, day }: LocalDay): string => `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`

/** "09:05" */
export const isoTime = (minutes: number): string => `${pad(Math.floor(minutes / 60), 2)}:${pad(minutes % 60, 2)}`

/** Moves a day by whole days. */
export function addDays({ year, month, day }: LocalDay, days: number): LocalDay {
  return fromUtc(new Date(Date.UTC(year, month - 1, day + days)))
}

/** Moves a day by whole months; the 31st of a shorter month is its last day. */
export function addMonths({ year, month, day }: LocalDay, months: number): LocalDay {
  const count = year * 12 + (month - 1) + months
  const target = { year: Math.floor(count / 12), month: (count % 12) + 1 }
  const last = new Date(Date.UTC(target.year, target.month, 0)).getUTCDate()
  return { ...target, day: Math.min(day, last) }
}

/** 0 for Sunday. */
export const weekdayOf = ({ year, month, day }: LocalDay): number =>
  new Date(Date.UTC(year, month - 1, day)).getUTCDay()

/** Whether the day exists. */
export function isRealDay(day: LocalDay): boolean {
  return isoDay(fromUtc(new Date(Date.UTC(day.year, day.month - 1, day.day)))) === isoDay(day)
}

const fromUtc = (date: Date): LocalDay => ({
  year: date.getUTCFullYear(),
  month: date.getUTCMonth() + 1,
  day: date.getUTCDate(),
})

const pad = (value: number, width: number) => String(value).padStart(width, "0")
