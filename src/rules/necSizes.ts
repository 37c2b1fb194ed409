/** The three tables of the United States that size grounding and bonding conductors, read by area. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { kcmilOf } from "./kcmilOf"
import { necBondingJumper } from "./tables/necBondingJumper"
import { necElectrodeConductor } from "./tables/necElectrodeConductor"
import { necEquipmentConductor } from "./tables/necEquipmentConductor"
import { necLargeJumper } from "./tables/necLargeJumper"

const isUpTo = (kcmil: number, size: string | null) => {
  if (size === null) return true
  const most = kcmilOf(size)
  return most.ok && kcmil <= most.value
}

/** Copper grounding electrode conductor for a largest ungrounded copper conductor of this size. */
export const electrodeConductorSize = (largest: string): Outcome<string> => {
  const area = kcmilOf(largest)
  return area.ok ? done(necElectrodeConductor.rows.find((row) => isUpTo(area.value, row.upToSize))!.copper) : area
}

/** Equipment grounding conductor for a device of this rating; the next line of the table counts. */
export const equipmentConductorSize = (deviceA: number, metal: "copper" | "aluminium"): Outcome<string> => {
  const row = necEquipmentConductor.rows.find((one) => deviceA <= one.deviceA)
  return row ? done(row[metal]) : refuse("Above two thousand amps the editions differ. Look it up.")
}

export interface BondingJumper {
  copper: string
  aluminium: string
}

/** Bonding jumper for supply conductors of this whole area (parallel ones added) and metal. */
export const bondingJumperSize = (kcmil: number, metal: "copper" | "aluminium"): BondingJumper => {
  const ends = metal === "copper" ? "upToCopper" : "upToAluminium"
  const row = necBondingJumper.rows.find((one) => isUpTo(kcmil, one[ends]))
  const share = `${kcmil * necLargeJumper.rows[0]!.share} kcmil or more`
  return row ?? { copper: share, aluminium: share }
}
