/**
 * k of the sheath or armour of a cable used as a protective conductor.
 */
import { defineTable } from "../Table"

export const kSheath = defineTable({
  title: "k of a cable sheath or armour",
  source: { standard: "BS 7671", edition: "2018, by a guide of that year", clause: "Table 54.4" },
  unit: "A·√s/mm²",
  status: "direct",
  rows: [
    { metal: "aluminium", insulation: "70C thermoplastic", k: 93 },
    { metal: "aluminium", insulation: "90C thermoplastic", k: 85 },
    { metal: "aluminium", insulation: "90C thermosetting", k: 85 },
    { metal: "steel", insulation: "70C thermoplastic", k: 51 },
    { metal: "steel", insulation: "90C thermoplastic", k: 46 },
    { metal: "steel", insulation: "90C thermosetting", k: 46 },
    { metal: "lead", insulation: "70C thermoplastic", k: 26 },
    { metal: "lead", insulation: "90C thermoplastic", k: 23 },
    { metal: "lead", insulation: "90C thermosetting", k: 23 },
  ],
})
