/** Ends of the international rule for main bonds. The half itself, and what it is half of, are from memory. */
import { defineTable } from "../Table"

export const iecBondLimits = defineTable({
  title: "Main bond, international rule: least and most by metal",
  source: { standard: "IEC 60364-5-54", edition: "2011, by DIN VDE 0100-540", clause: "544.1" },
  unit: "mm²",
  status: "direct",
  note: "An amendment of April 2021 exists; what it changes was not seen.",
  rows: [
    { metal: "copper", leastMm2: 6, mostMm2: 25 },
    { metal: "aluminium", leastMm2: 16, mostMm2: null },
    { metal: "steel", leastMm2: 50, mostMm2: null },
  ],
})
