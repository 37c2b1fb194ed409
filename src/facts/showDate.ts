/** Dates to be read: the day first, and the month in letters, so that nobody takes one for the other. */

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"]

/** "2026-03-02" as "2 Mar 2026"; anything else as it stands. */
export const showDate = (date: string): string => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date)
  const month = months[Number(parts?.[2]) - 1]
  return parts && month ? `${Number(parts[3])} ${month} ${parts[1]}` : date
}
