/** The international pack. Thin: floors and tables as far as public pages and one national edition show them. */
import type { Pack } from "../../Pack"
import { conductorResistance } from "../../tables/conductorResistance"
import { iecBondLimits } from "../../tables/iecBondLimits"
import { iecHalfRule } from "../../tables/iecHalfRule"
import { iecPen } from "../../tables/iecPen"
import { protectiveByLine } from "../../tables/protectiveByLine"
import { separateProtective } from "../../tables/separateProtective"
import { universalRules } from "../../universal/universalRules"
import { mainBondByLargest } from "./mainBondByLargest"

export const iec60364: Pack = {
  id: "iec-60364",
  title: "International, IEC 60364-5-54 (thin)",
  edition: "IEC 60364-5-54:2011, at second hand",
  newer: "Amendment 1 of April 2021 was not seen, and national editions differ. Look in the one that is in force.",
  thin: true,
  rules: [mainBondByLargest, ...universalRules],
  tables: [iecBondLimits, iecHalfRule, iecPen, protectiveByLine, separateProtective, conductorResistance],
  questions: [
    {
      kind: "conductor_csa",
      item: "earthing_conductor",
      words: "What size is the earthing conductor?",
      because: "Main bonds are sized from the largest protective conductor.",
    },
  ],
}
