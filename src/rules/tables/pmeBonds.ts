/**
 * Least copper main bond where the supply's neutral is also its earth (PME). The neutral counts as the copper size of
 * equal conductance. A distributor may ask for more.
 */
import { defineTable } from "../Table"

export const pmeBonds = defineTable({
  title: "Least main bond of a PME supply, by the copper-equivalent size of the supply neutral",
  source: {
    standard: "BS 7671",
    edition: "17th edition handbook; same bands as the 18th",
    clause: "544.1.1, Table 54.8",
  },
  unit: "mm² copper",
  status: "direct",
  note: "Seen in a handbook, not in the standard: see the book in force.",
  rows: [
    { upToMm2: 35, bondMm2: 10 },
    { upToMm2: 50, bondMm2: 16 },
    { upToMm2: 95, bondMm2: 25 },
    { upToMm2: 150, bondMm2: 35 },
    { upToMm2: null, bondMm2: 50 },
  ],
})
