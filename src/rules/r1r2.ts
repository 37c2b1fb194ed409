/** Ohms of a circuit's line and protective conductor together, out and back, at a temperature. */
import { done, type Outcome } from "../facts/Outcome"
import { britishAlphaPerK, factorFrom20, type Metal } from "./correctOhmsForTemperature"
import { ohmsPerMetre } from "./ohmsPerMetre"

export interface Circuit {
  lineMm2: number
  cpcMm2: number
  lengthM: number
  /** 20 °C unless told otherwise. The rounded British coefficient is used: 70 °C is just 1.2 times 20 °C. */
  temperatureC?: number
  metal?: Metal
}

/** R1 + R2 in ohms. Refuses sizes that the table of conductors does not have. */
export const r1r2 = ({ lineMm2, cpcMm2, lengthM, temperatureC = 20, metal = "copper" }: Circuit): Outcome<number> => {
  const line = ohmsPerMetre({ csaMm2: lineMm2, metal })
  if (!line.ok) return line
  const cpc = ohmsPerMetre({ csaMm2: cpcMm2, metal })
  if (!cpc.ok) return cpc
  return done((line.value + cpc.value) * lengthM * factorFrom20(temperatureC, britishAlphaPerK))
}
