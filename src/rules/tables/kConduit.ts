/**
 * k of steel conduit, ducting or trunking used as a protective conductor.
 */
import { defineTable } from "../Table"

export const kConduit = defineTable({
  title: "k of steel conduit, ducting and trunking",
  source: { standard: "BS 7671", edition: "2018, by a guide of that year", clause: "Table 54.5" },
  unit: "A·√s/mm²",
  status: "direct",
  rows: [
    { metal: "steel", insulation: "70C thermoplastic", k: 47 },
    { metal: "steel", insulation: "90C thermoplastic", k: 44 },
    { metal: "steel", insulation: "90C thermosetting", k: 58 },
  ],
})
