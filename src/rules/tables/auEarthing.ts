/** Main earthing conductors of Australia and New Zealand by a contractor's page that names no edition. Not for bonds. */
import { defineTable } from "../Table"

export const auEarthing = defineTable({
  title: "Least copper earthing conductor by the size of the copper active conductor",
  source: { standard: "AS/NZS 3000", edition: "not stated on the page", clause: "Table 5.1" },
  unit: "mm²",
  status: "direct",
  rows: [
    { activeMm2: 10, earthingMm2: 4 },
    { activeMm2: 16, earthingMm2: 6 },
    { activeMm2: 25, earthingMm2: 6 },
    { activeMm2: 35, earthingMm2: 10 },
    { activeMm2: 50, earthingMm2: 16 },
    { activeMm2: 70, earthingMm2: 25 },
    { activeMm2: 95, earthingMm2: 25 },
    { activeMm2: 120, earthingMm2: 35 },
  ],
})
