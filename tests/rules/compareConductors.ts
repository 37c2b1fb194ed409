/** What conductors measure and how heat changes it, against the collected values. */
import {
  alphaOf,
  britishAlphaPerK,
  correctOhmsForTemperature,
  factorFrom20,
} from "../../src/rules/correctOhmsForTemperature"
import { mostColdZsOhms } from "../../src/rules/maxZsOhms"
import { ohmsPerMetre } from "../../src/rules/ohmsPerMetre"
import { r1r2 } from "../../src/rules/r1r2"
import { close, type Make, metalOf, must, num } from "./comparing"

export const conductors: Record<string, Make> = {
  "r20-": (v) => {
    const conductorClass = num(v, "class") as 1 | 2 | 5
    return close(must(ohmsPerMetre({ metal: metalOf(v), conductorClass, csaMm2: num(v, "csa_mm2") })) * 1000, v, 1e-9)
  },
  "r1r2-conflict": (v) => close(must(r1r2({ lineMm2: 1.5, cpcMm2: 1, lengthM: 1 })) * 1000, v, 1e-6),
  "r1r2-": (v) => {
    const circuit = { lineMm2: num(v, "line_mm2"), cpcMm2: num(v, "cpc_mm2"), lengthM: 1, metal: metalOf(v) } as const
    return close(must(r1r2(circuit)) * 1000, v, 1e-6)
  },
  "alpha-cu": (v) => close(alphaOf("copper"), v, 0),
  "alpha-al": (v) => close(alphaOf("aluminium"), v, 0),
  "alpha-uk": (v) => close(britishAlphaPerK, v, 0),
  "kt-to20": (v) => close(toTwenty(num(v, "measured_at_C")), v, 0.002),
  "handbook-to20": (v) => close(toTwenty(num(v, "measured_at_C")), v, 0.005),
  "osg-from20": (v) => close(factorFrom20(num(v, "ambient_C"), britishAlphaPerK), v, 0.0005),
  "mult-70pvc": (v) => close(factorFrom20(70, britishAlphaPerK), v, 0.0005),
  "mult-other": (v) => {
    const hotC = String(v.inputs.cpc).startsWith("not") ? 30 : Number.parseInt(String(v.inputs.insulation), 10)
    return close(factorFrom20(hotC, britishAlphaPerK), v, 0.0005)
  },
  "rule-0.8": (v) => close(mostColdZsOhms(1), v, 0),
}
const toTwenty = (fromC: number) => correctOhmsForTemperature(1, { fromC, toC: 20, alphaPerK: britishAlphaPerK })
