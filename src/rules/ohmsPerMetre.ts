/** Ohms of one metre of conductor at 20 °C, from the table of IEC 60228; a size that is not in it is refused. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { Metal } from "./correctOhmsForTemperature"
import { conductorResistance } from "./tables/conductorResistance"

/** 1 solid, 2 stranded, 5 flexible. */
export type ConductorClass = 1 | 2 | 5

export interface Conductor {
  csaMm2: number
  /** Copper unless told otherwise. */
  metal?: Metal
  /** Class 2 unless told otherwise. */
  conductorClass?: ConductorClass
}

const rowOf = (csaMm2: number, metal: Metal, conductorClass: ConductorClass) =>
  conductorResistance.rows.find(
    (row) => row.metal === metal && row.conductorClass === conductorClass && row.csaMm2 === csaMm2,
  )

/** The most it may be, in Ω/m. Solid copper has the stranded figure where it has no line of its own. */
export const ohmsPerMetre = ({ csaMm2, metal = "copper", conductorClass = 2 }: Conductor): Outcome<number> => {
  const row = rowOf(csaMm2, metal, conductorClass) ?? (conductorClass === 1 ? rowOf(csaMm2, metal, 2) : undefined)
  return row
    ? done(row.ohmsPerKm / 1000)
    : refuse(`There is no figure for ${csaMm2} square ${metal}, class ${conductorClass}.`)
}
