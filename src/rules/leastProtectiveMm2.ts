/** Least protective conductor by the size of its line conductor, without a sum (543.1.4). */
import { protectiveByLine } from "./tables/protectiveByLine"

/** In mm², same metal, not rounded to a size that is sold. */
export const leastProtectiveMm2 = (lineMm2: number): number => {
  const row = protectiveByLine.rows.find((one) => one.upToMm2 === null || lineMm2 <= one.upToMm2)!
  return row.fixedMm2 ?? lineMm2 * row.shareOfLine
}
