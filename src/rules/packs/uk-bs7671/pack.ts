/** The British pack: BS 7671 as far as it could be seen in public, with the guidance that goes with it. */
import type { Pack } from "../../Pack"
import { bondIsNotOpen } from "../../shared/bondIsNotOpen"
import { leadsWereNulled } from "../../shared/leadsWereNulled"
import { oneEndWasOff } from "../../shared/oneEndWasOff"
import { readingFitsConductor } from "../../shared/readingFitsConductor"
import { conductorResistance } from "../../tables/conductorResistance"
import { mainBondLimits } from "../../tables/mainBondLimits"
import { pmeBonds } from "../../tables/pmeBonds"
import { readingTolerances } from "../../tables/readingTolerances"
import { temperatureCoefficients } from "../../tables/temperatureCoefficients"
import { clampNearEntry } from "./clampNearEntry"
import { mainBondSize } from "./mainBondSize"

export const ukBs7671: Pack = {
  id: "uk-bs7671",
  title: "United Kingdom, BS 7671",
  edition: "BS 7671:2018+A2:2022",
  newer:
    "Amendment 4 was published on 15 April 2026 and the edition before it was withdrawn on 15 October 2026. No figure " +
    "here was checked against it: look in the edition in force, and ask the network operator.",
  thin: false,
  rules: [mainBondSize, readingFitsConductor, bondIsNotOpen, clampNearEntry, leadsWereNulled, oneEndWasOff],
  tables: [pmeBonds, mainBondLimits, conductorResistance, temperatureCoefficients, readingTolerances],
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
