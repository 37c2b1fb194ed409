/**
 * k of a protective conductor that is neither in a cable nor bunched with cables. Thermoplastic ones above 300 mm² get a
 * smaller k; the others keep theirs.
 */
import { defineTable } from "../Table"

export const kNotInCable = defineTable({
  title: "k of a protective conductor not in a cable and not bunched",
  source: { standard: "BS 7671", edition: "2018, by a guide of that year", clause: "Table 54.2" },
  unit: "A·√s/mm²",
  status: "direct",
  rows: [
    { metal: "copper", insulation: "70C thermoplastic", k: 143, kOver300Mm2: 133 },
    { metal: "copper", insulation: "90C thermoplastic", k: 143, kOver300Mm2: 133 },
    { metal: "copper", insulation: "90C thermosetting", k: 176, kOver300Mm2: null },
    { metal: "copper", insulation: "60C rubber", k: 159, kOver300Mm2: null, status: "memory" },
    { metal: "copper", insulation: "85C rubber", k: 166, kOver300Mm2: null, status: "memory" },
    { metal: "aluminium", insulation: "70C thermoplastic", k: 95, kOver300Mm2: 88 },
    { metal: "aluminium", insulation: "90C thermoplastic", k: 95, kOver300Mm2: 88 },
    { metal: "aluminium", insulation: "90C thermosetting", k: 116, kOver300Mm2: null },
    { metal: "steel", insulation: "70C thermoplastic", k: 52, kOver300Mm2: null },
    { metal: "steel", insulation: "90C thermoplastic", k: 52, kOver300Mm2: null },
    { metal: "steel", insulation: "90C thermosetting", k: 64, kOver300Mm2: null },
  ],
})
