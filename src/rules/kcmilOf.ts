/** American sizes as areas: gauges by their table, and "350" is already in kcmil. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { wireGauges } from "./tables/wireGauges"

/** Area in thousands of circular mils. */
export const kcmilOf = (size: string): Outcome<number> => {
  const gauge = wireGauges.rows.find((row) => row.size === size)
  if (gauge) return done(gauge.kcmil)
  const kcmil = Number(size)
  return kcmil >= 250 ? done(kcmil) : refuse(`${size} is not a size in gauge or kcmil.`)
}
