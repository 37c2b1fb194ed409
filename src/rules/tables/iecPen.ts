/** Least conductor that is protective and neutral at once, and how much a protective one need be in a TT system. */
import { defineTable } from "../Table"

export const iecPen = defineTable({
  title: "Least PEN conductor, and the most a protective conductor need be in TT with independent electrodes",
  source: { standard: "IEC 60364-5-54", edition: "by a public guide and DIN VDE 0100-540", clause: "543.1, 543.4" },
  unit: "mm²",
  status: "direct",
  rows: [
    { metal: "copper", leastPenMm2: 10, mostTtMm2: 25 },
    { metal: "aluminium", leastPenMm2: 16, mostTtMm2: 35 },
  ],
})
