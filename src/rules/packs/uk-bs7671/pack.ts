/** The British pack: BS 7671 as far as it could be seen in public, with the guidance that goes with it. */
import type { Pack } from "../../Pack"
import { adiabaticBounds } from "../../tables/adiabaticBounds"
import { breakerCurrents } from "../../tables/breakerCurrents"
import { buriedEarthing } from "../../tables/buriedEarthing"
import { coldFactor } from "../../tables/coldFactor"
import { conductorResistance } from "../../tables/conductorResistance"
import { continuityAdvice } from "../../tables/continuityAdvice"
import { declaredFault } from "../../tables/declaredFault"
import { disconnectionTimes } from "../../tables/disconnectionTimes"
import { electrodeAdvice } from "../../tables/electrodeAdvice"
import { extraneousTest } from "../../tables/extraneousTest"
import { finalCircuits } from "../../tables/finalCircuits"
import { fuseZs } from "../../tables/fuseZs"
import { insulationAdvice } from "../../tables/insulationAdvice"
import { insulationLimits } from "../../tables/insulationLimits"
import { kBare } from "../../tables/kBare"
import { kConduit } from "../../tables/kConduit"
import { kInCable } from "../../tables/kInCable"
import { kNotInCable } from "../../tables/kNotInCable"
import { kSheath } from "../../tables/kSheath"
import { mainBondLimits } from "../../tables/mainBondLimits"
import { pmeBonds } from "../../tables/pmeBonds"
import { protectiveByLine } from "../../tables/protectiveByLine"
import { rcdTimes } from "../../tables/rcdTimes"
import { readingTolerances } from "../../tables/readingTolerances"
import { ringSpread } from "../../tables/ringSpread"
import { separateProtective } from "../../tables/separateProtective"
import { supplementaryBonds } from "../../tables/supplementaryBonds"
import { supplyVoltage } from "../../tables/supplyVoltage"
import { temperatureCoefficients } from "../../tables/temperatureCoefficients"
import { touchVoltage } from "../../tables/touchVoltage"
import { typicalZe } from "../../tables/typicalZe"
import { universalRules } from "../../universal/universalRules"
import { ukBs7671About } from "./about"
import { clampNearEntry } from "./clampNearEntry"
import { earthingConductorSize } from "./earthingConductorSize"
import { electrodeOhms } from "./electrodeOhms"
import { faultCurrentIsDeclared } from "./faultCurrentIsDeclared"
import { labelIsOn } from "./labelIsOn"
import { mainBondSize } from "./mainBondSize"
import { partNeedsBond } from "./partNeedsBond"
import { supplementaryOhms } from "./supplementaryOhms"
import { supplementarySize } from "./supplementarySize"
import { zeIsUsual } from "./zeIsUsual"

export const ukBs7671: Pack = {
  ...ukBs7671About,
  rules: [
    mainBondSize,
    partNeedsBond,
    earthingConductorSize,
    clampNearEntry,
    ...universalRules,
    labelIsOn,
    supplementarySize,
    supplementaryOhms,
    electrodeOhms,
    zeIsUsual,
    faultCurrentIsDeclared,
  ],
  tables: [
    pmeBonds,
    mainBondLimits,
    conductorResistance,
    temperatureCoefficients,
    readingTolerances,
    continuityAdvice,
    protectiveByLine,
    buriedEarthing,
    separateProtective,
    adiabaticBounds,
    kNotInCable,
    kInCable,
    kSheath,
    kConduit,
    kBare,
    supplementaryBonds,
    touchVoltage,
    extraneousTest,
    electrodeAdvice,
    typicalZe,
    declaredFault,
    disconnectionTimes,
    finalCircuits,
    supplyVoltage,
    breakerCurrents,
    fuseZs,
    coldFactor,
    ringSpread,
    insulationLimits,
    insulationAdvice,
    rcdTimes,
  ],
  questions: [
    {
      kind: "earthing_arrangement",
      item: "supply",
      words: "How does the supply give its earth?",
      because: "It decides how main bonds are sized.",
    },
    {
      kind: "neutral_csa",
      item: "supply",
      when: ["TN-C-S"],
      words: "What size is the supply neutral?",
      because: "On a PME supply it decides the size of every main bond.",
    },
    {
      kind: "conductor_csa",
      item: "earthing_conductor",
      when: ["TN-S", "TT"],
      words: "What size is the earthing conductor?",
      because: "Without PME it decides the size of every main bond.",
    },
  ],
}
