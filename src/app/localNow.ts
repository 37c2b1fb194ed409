/** The time now with the device's own offset, as log lines want it: 2026-03-02T09:14:00.000+00:00. */
export const localNow = (date = new Date()): string => {
  const minutes = -date.getTimezoneOffset()
  const two = (count: number) => String(Math.floor(Math.abs(count))).padStart(2, "0")
  const local = new Date(date.getTime() + minutes * 60_000).toISOString().slice(0, -1)
  return `${local}${minutes < 0 ? "-" : "+"}${two(minutes / 60)}:${two(minutes % 60)}`
}
