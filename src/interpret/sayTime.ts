/** Times and dates in words, British order, nothing left to guess: the year and the half of the day are always said. */
import { sayNumber } from "../facts/sayNumber"

const months = "January February March April May June July August September October November December".split(" ")

/** "14:05" → "fourteen oh five", "09:00" → "nine hundred". */
export function sayTime(time: string): string {
  const [hours, minutes] = time.split(":").map(Number) as [number, number]
  if (minutes === 0) return `${sayNumber(hours)} hundred hours`
  return `${sayNumber(hours)} ${minutes < 10 ? `oh ${sayNumber(minutes)}` : sayNumber(minutes)}`
}

/** "2030-04-03" → "3 April 2030". A voice reads this well, and an ear cannot take the figures for a value. */
export function sayDate(date: string): string {
  const [year, month, day] = date.split("-").map(Number) as [number, number, number]
  return `${day} ${months[month - 1]} ${year}`
}
