/**
 * What may move a good reading away from length times ohms per metre. These are working assumptions, not limits: they
 * only decide when a reading is worth a second look.
 */
import { defineTable } from "../Table"

export const readingTolerances = defineTable({
  title: "What may move a reading away from its expected value",
  source: { standard: "common practice, no source", edition: "none", clause: "none" },
  unit: "share, °C or Ω, as named",
  status: "memory",
  note:
    "Annealed copper of the full area measures 5 to 6 % under the figure of IEC 60228. Lengths are paced. " +
    "Two clean joints add up to a hundredth of an ohm.",
  rows: [{ conductorUnder: 0.08, lengthShare: 0.1, coldestC: 0, warmestC: 30, jointOhms: 0.01 }],
})
