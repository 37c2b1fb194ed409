/**
 * k of a protective conductor that is in a cable or bunched with cables, and so starts out warm.
 */
import { defineTable } from "../Table"

export const kInCable = defineTable({
  title: "k of a protective conductor in a cable or bunched",
  source: { standard: "BS 7671", edition: "2018, by a guide of that year", clause: "Table 54.3" },
  unit: "A·√s/mm²",
  status: "direct",
  rows: [
    { metal: "copper", insulation: "70C thermoplastic", k: 115, kOver300Mm2: 103 },
    { metal: "copper", insulation: "90C thermoplastic", k: 100, kOver300Mm2: 86 },
    { metal: "copper", insulation: "90C thermosetting", k: 143, kOver300Mm2: null },
    { metal: "aluminium", insulation: "70C thermoplastic", k: 76, kOver300Mm2: null, status: "memory" },
    { metal: "aluminium", insulation: "90C thermosetting", k: 94, kOver300Mm2: null, status: "memory" },
  ],
})
