/** The least supplementary bond, by what it joins and whether it is protected (544.2, with the floor of 543.1.1). */
import { leastSeparateMm2 } from "./leastEarthingConductorMm2"
import { nextSizeUp } from "./nextSizeUp"
import { supplementaryBonds } from "./tables/supplementaryBonds"

export type SupplementaryBetween = (typeof supplementaryBonds.rows)[number]["between"]

export interface SupplementaryWanted {
  between: SupplementaryBetween
  /** The smaller connected protective conductor, or the one of the exposed part, in mm². Not used between two pipes. */
  protectiveMm2?: number
  mechanicallyProtected: boolean
}

/** In mm² of copper, the next size that is sold; null where the protective conductor is needed and missing. */
export const leastSupplementaryMm2 = (wanted: SupplementaryWanted): number | null => {
  const { between, protectiveMm2, mechanicallyProtected } = wanted
  const row = supplementaryBonds.rows.find((one) => one.between === between)!
  if (row.share !== null && protectiveMm2 === undefined) return null
  const byShare = row.share === null || protectiveMm2 === undefined ? null : row.share * protectiveMm2
  const own = mechanicallyProtected ? row.leastProtectedMm2 : row.leastUnprotectedMm2
  const floors = [byShare, own, leastSeparateMm2(mechanicallyProtected)].filter((floor) => floor !== null)
  return nextSizeUp(Math.max(...floors))
}
