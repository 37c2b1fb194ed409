/**
 * The least earthing conductor: the largest of several answers. The fault or the line conductor gives one; the ground,
 * the lack of a cable around it and a PME supply each set a floor below which it may not go.
 */
import type { Status } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { adiabaticMm2, type Fault } from "./adiabaticMm2"
import { leastPmeBondMm2 } from "./leastMainBondMm2"
import { leastProtectiveMm2 } from "./leastProtectiveMm2"
import { nextSizeUp } from "./nextSizeUp"
import { buriedEarthing } from "./tables/buriedEarthing"
import { protectiveByLine } from "./tables/protectiveByLine"
import { separateProtective } from "./tables/separateProtective"

export interface EarthingWanted {
  /** One of the two is needed: the line conductor (the tails), or the fault and its k. */
  lineMm2?: number | undefined
  fault?: (Fault & { k: number }) | undefined
  metal?: "copper" | "steel" | undefined
  buried?: boolean | undefined
  /** What is not said to be protected counts as not protected. */
  corrosionProtected?: boolean | undefined
  mechanicallyProtected?: boolean | undefined
  /** Copper-equivalent supply neutral, given only for a PME supply. */
  pmeNeutralMm2?: number | undefined
}

/** One of the answers, of which the largest counts. */
export interface EarthingPart {
  leastMm2: number
  because: string
  clause: string
  status: Status
}

/** Floor for a conductor in the ground, Table 54.1. */
export const leastBuriedMm2 = (wanted: EarthingWanted): EarthingPart => {
  const { metal = "copper", corrosionProtected = false, mechanicallyProtected = false } = wanted
  const row = buriedEarthing.rows.find(
    (one) =>
      one.metal === metal &&
      one.corrosionProtected === corrosionProtected &&
      one.mechanicallyProtected === mechanicallyProtected,
  )!
  const guards = [corrosionProtected && "corrosion", mechanicallyProtected && "damage"].filter(Boolean)
  return {
    leastMm2: row.leastMm2,
    because: `buried ${metal}, ${guards.length > 0 ? `protected against ${guards.join(" and ")}` : "not protected"}`,
    clause: buriedEarthing.source.clause,
    status: ("status" in row ? row.status : undefined) ?? buriedEarthing.status,
  }
}

/** Floor for a protective conductor on its own, 543.1.1. */
export const leastSeparateMm2 = (mechanicallyProtected: boolean): number =>
  separateProtective.rows.find((row) => row.mechanicallyProtected === mechanicallyProtected)!.leastMm2

const bySum = ({ lineMm2, fault }: EarthingWanted): Outcome<EarthingPart> => {
  if (fault) {
    const least = adiabaticMm2(fault)
    const because = `√(${fault.faultA}² × ${fault.seconds}) / ${fault.k}`
    return least.ok ? done({ leastMm2: least.value, because, clause: "543.1.3", status: "derived" }) : least
  }
  if (lineMm2 === undefined) return refuse("The line conductor's size, or the fault current, is needed.")
  const because = `line conductor ${lineMm2} mm²`
  const { source, status } = protectiveByLine
  return done({ leastMm2: leastProtectiveMm2(lineMm2), because, clause: source.clause, status })
}

/** All answers, the one that decides first, and the size to buy in mm²; refuses what no size that is sold can do. */
export const leastEarthingConductorMm2 = (
  wanted: EarthingWanted,
): Outcome<{ leastMm2: number; decides: EarthingPart; parts: EarthingPart[] }> => {
  const sum = bySum(wanted)
  if (!sum.ok) return sum
  const { buried = false, mechanicallyProtected = false, pmeNeutralMm2 } = wanted
  const separate: EarthingPart = {
    leastMm2: leastSeparateMm2(mechanicallyProtected),
    because: `on its own, ${mechanicallyProtected ? "" : "not "}mechanically protected`,
    clause: separateProtective.source.clause,
    status: separateProtective.status,
  }
  const pme: EarthingPart[] =
    pmeNeutralMm2 === undefined
      ? []
      : [
          {
            leastMm2: leastPmeBondMm2(pmeNeutralMm2),
            because: `PME supply with a neutral of ${pmeNeutralMm2} mm²: no less than its main bonds`,
            clause: "542.3.1, 544.1.1",
            status: "direct",
          },
        ]
  const parts = [sum.value, buried ? leastBuriedMm2(wanted) : separate, ...pme].sort((a, b) => b.leastMm2 - a.leastMm2)
  const decides = parts[0]!
  const leastMm2 = nextSizeUp(decides.leastMm2)
  return leastMm2 === null
    ? refuse("It would have to be larger than any size listed here.")
    : done({ leastMm2, decides, parts })
}
