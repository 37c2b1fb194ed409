/**
 * The least copper main bond. With PME (TN-C-S) it follows the supply neutral and has no upper end; else it is half the
 * earthing conductor that is required, which is not always the one that is fitted (544.1.1).
 */
import type { Arrangement } from "../facts/Fact"
import { nextSizeUp } from "./nextSizeUp"
import { mainBondLimits } from "./tables/mainBondLimits"
import { pmeBonds } from "./tables/pmeBonds"

/** By the copper-equivalent size of the supply neutral, in mm². */
export const leastPmeBondMm2 = (neutralMm2: number): number =>
  pmeBonds.rows.find((row) => row.upToMm2 === null || neutralMm2 <= row.upToMm2)!.bondMm2

/** Half the required earthing conductor within its ends, and then the next size that is sold; all in mm². */
export const leastHalfBondMm2 = (earthingMm2: number): number => {
  const { share, leastMm2, mostMm2 } = mainBondLimits.rows[0]!
  return nextSizeUp(Math.min(Math.max(earthingMm2 * share, leastMm2), mostMm2))!
}

/** No supply of this arrangement lets a main bond be smaller, whatever its neutral or earthing conductor. */
export const leastEverMm2 = (arrangement: Arrangement | undefined): number =>
  arrangement === "TN-C-S" ? pmeBonds.rows[0]!.bondMm2 : mainBondLimits.rows[0]!.leastMm2

/** Null while the size that decides is not known. Sizes in mm² of copper. */
export const leastMainBondMm2 = (supply: {
  arrangement: Arrangement
  neutralMm2?: number | undefined
  earthingMm2?: number | undefined
}): number | null => {
  if (supply.arrangement === "TN-C-S")
    return supply.neutralMm2 === undefined ? null : leastPmeBondMm2(supply.neutralMm2)
  return supply.earthingMm2 === undefined ? null : leastHalfBondMm2(supply.earthingMm2)
}
