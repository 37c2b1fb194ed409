/**
 * What a meter should show for a length of conductor, as a band. The middle is length times ohms per metre; the band is
 * as wide as the instrument, the temperature, the real conductor, the paced length and the joints make it. Independent
 * doubts are added as squares. At a few hundredths of an ohm the instrument alone is most of the band.
 */
import { done, type Outcome } from "../facts/Outcome"
import type { Instrument } from "../facts/Situation"
import { alphaOf, factorFrom20 } from "./correctOhmsForTemperature"
import { type Conductor, ohmsPerMetre } from "./ohmsPerMetre"
import { readingTolerances } from "./tables/readingTolerances"

/** Usual error of a low-resistance meter, from memory: 2 % of the reading and 3 digits of 0.01 Ω. */
export const usualInstrument: Instrument = { percent: 2, digits: 3, digitOhms: 0.01, assumed: true }

export interface ConductorRun extends Conductor {
  lengthM: number
  /** Where it is known; otherwise 20 °C, and the band allows for a building in winter and in summer. */
  temperatureC?: number
  instrument?: Instrument
}

/** All in ohms. `low` and `high` are what a meter may show; `low` is never under nought. */
export interface OhmsBand {
  nominal: number
  low: number
  high: number
  ohmsPerM: number
  instrumentOhms: number
}

const together = (...ohms: number[]) => Math.hypot(...ohms)

/** Refuses a size that the table of conductors does not have. */
export const expectedOhms = (run: ConductorRun): Outcome<OhmsBand> => {
  const { lengthM, temperatureC, instrument = usualInstrument, metal = "copper" } = run
  const perMetre = ohmsPerMetre(run)
  if (!perMetre.ok) return perMetre
  const { conductorUnder, lengthShare, coldestC, warmestC, jointOhms } = readingTolerances.rows[0]!
  const alphaPerK = alphaOf(metal)
  const ohmsPerM = perMetre.value * factorFrom20(temperatureC ?? 20, alphaPerK)
  const nominal = ohmsPerM * lengthM
  const colder = temperatureC === undefined ? nominal * (1 - factorFrom20(coldestC, alphaPerK)) : 0
  const warmer = temperatureC === undefined ? nominal * (factorFrom20(warmestC, alphaPerK) - 1) : 0
  const instrumentOhms = (nominal * instrument.percent) / 100 + instrument.digits * instrument.digitOhms
  const lengthOhms = nominal * lengthShare
  const under = together(nominal * conductorUnder, colder, lengthOhms, instrumentOhms)
  const over = together(warmer, lengthOhms, instrumentOhms) + jointOhms
  return done({ nominal, low: Math.max(0, nominal - under), high: nominal + over, ohmsPerM, instrumentOhms })
}
