/** Up to which rating a circuit counts as a final circuit that must be cut off fast. */
import { defineTable } from "../Table"

export const finalCircuits = defineTable({
  title: "Largest rating of a final circuit with the short disconnection time",
  source: { standard: "BS 7671", edition: "2018", clause: "411.3.2.2" },
  unit: "A",
  status: "direct",
  note: "The 17th edition had 32 A for all final circuits.",
  rows: [
    { hasSockets: true, mostA: 63 },
    { hasSockets: false, mostA: 32 },
  ],
})
