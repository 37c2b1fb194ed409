/**
 * Brings a resistance from one temperature to another by the linear law. Tables of factors exist in both directions and
 * are easily mixed up, which doubles the error: so both directions come from the one formula, and no table is used.
 */
import { temperatureCoefficients } from "./tables/temperatureCoefficients"

export type Metal = "copper" | "aluminium"

/** Coefficient of the metal per kelvin, from 20 °C, as IEC 60228 has it. */
export const alphaOf = (metal: Metal): number =>
  temperatureCoefficients.rows.find((row) => row.metal === metal)!.alphaPerK

/** The rounded coefficient of British guidance, for either metal. */
export const britishAlphaPerK = temperatureCoefficients.rows.find((row) => row.metal.startsWith("either"))!.alphaPerK

const referenceC = 20

/** Factor from the value at 20 °C to the value at `temperatureC`: 1.2 at 70 °C with 0.004 per kelvin. */
export const factorFrom20 = (temperatureC: number, alphaPerK: number) => 1 + alphaPerK * (temperatureC - referenceC)

/** The same conductor's ohms at `toC`, given its ohms at `fromC`, both in °C. By the British 0.004 unless told otherwise. */
export const correctOhmsForTemperature = (
  ohms: number,
  change: { fromC: number; toC: number; alphaPerK?: number },
): number => {
  const alphaPerK = change.alphaPerK ?? britishAlphaPerK
  return (ohms * factorFrom20(change.toC, alphaPerK)) / factorFrom20(change.fromC, alphaPerK)
}
