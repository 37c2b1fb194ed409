/** Times of log lines for the screen, as the clock on the wall stood where the line was written. */
import { showDate } from "../../facts/showDate"

/** "09:41" of an ISO time with offset. */
export const showClock = (at: string): string => at.slice(11, 16)

/** "2 Mar 2026, 09:41" of an ISO time with offset. */
export const showMoment = (at: string): string => `${showDate(at.slice(0, 10))}, ${showClock(at)}`
