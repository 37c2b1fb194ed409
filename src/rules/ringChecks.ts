/**
 * A ring final circuit by its three end-to-end readings. Line and neutral should be alike; the protective conductor is
 * in proportion to its size; and across the ring a quarter of both together shows (that last law is theory from memory).
 */
import { done, type Outcome } from "../facts/Outcome"
import { ohmsPerMetre } from "./ohmsPerMetre"
import { ringSpread } from "./tables/ringSpread"

/** End-to-end ohms of line, neutral and protective conductor. */
export interface RingEnds {
  r1: number
  rn: number
  r2: number
}

export interface RingAnswer {
  /** Line and neutral differ by no more than the spread of like readings. */
  alike: boolean
  /** r2/r1 lies between the ratio of resistances and that of areas, with a little room. */
  inProportion: boolean
  /** What each cross-connected socket should read, in ohms. */
  r1r2Ohms: number
}

/** What the areas and the resistances say that r2/r1 should be: 1.67 and 1.63 for 2.5 with 1.5. */
export const ringRatios = (lineMm2: number, cpcMm2: number): Outcome<{ byArea: number; byOhms: number }> => {
  const line = ohmsPerMetre({ csaMm2: lineMm2 })
  if (!line.ok) return line
  const cpc = ohmsPerMetre({ csaMm2: cpcMm2 })
  return cpc.ok ? done({ byArea: lineMm2 / cpcMm2, byOhms: cpc.value / line.value }) : cpc
}

/** R1 + R2 of a ring by its end-to-end readings, in ohms. */
export const ringR1r2Ohms = ({ r1, r2 }: Pick<RingEnds, "r1" | "r2">): number => (r1 + r2) / 4

export const ringChecks = (ends: RingEnds, sizes: { lineMm2: number; cpcMm2: number }): Outcome<RingAnswer> => {
  const ratios = ringRatios(sizes.lineMm2, sizes.cpcMm2)
  if (!ratios.ok) return ratios
  const { spreadOhms, ratioTolerance } = ringSpread.rows[0]!
  const { byArea, byOhms } = ratios.value
  const ratio = ends.r2 / ends.r1
  return done({
    // A hundredth of a milliohm of room: readings are decimals, their difference here is binary.
    alike: Math.abs(ends.r1 - ends.rn) <= spreadOhms + 1e-5,
    inProportion:
      ratio >= Math.min(byArea, byOhms) - ratioTolerance && ratio <= Math.max(byArea, byOhms) + ratioTolerance,
    r1r2Ohms: ringR1r2Ohms(ends),
  })
}
