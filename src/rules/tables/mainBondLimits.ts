/** The ends of the half rule for main bonds where there is no PME. The half is of the required earthing conductor. */
import { defineTable } from "../Table"

export const mainBondLimits = defineTable({
  title: "Main bond without PME: share of the required earthing conductor, and its least and most",
  source: { standard: "BS 7671", edition: "2018", clause: "544.1.1" },
  unit: "mm² copper",
  status: "direct",
  rows: [{ share: 0.5, leastMm2: 6, mostMm2: 25 }],
})
