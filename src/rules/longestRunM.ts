/** How many metres of a conductor make a resistance: the way back from a reading to a length. */
import { done, type Outcome } from "../facts/Outcome"
import { type Conductor, ohmsPerMetre } from "./ohmsPerMetre"

/** Metres at 20 °C that measure just `ohms`, by the most that the conductor may be: real runs may be a little longer. */
export const longestRunM = (conductor: Conductor, ohms: number): Outcome<number> => {
  const perMetre = ohmsPerMetre(conductor)
  return perMetre.ok ? done(ohms / perMetre.value) : perMetre
}
