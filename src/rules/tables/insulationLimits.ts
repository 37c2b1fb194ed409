/** Test voltages and least insulation resistance. The figure above 500 V is from memory. */
import { defineTable } from "../Table"

export const insulationLimits = defineTable({
  title: "Insulation resistance: d.c. test voltage and least resistance",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "643.3.2, Table 64" },
  unit: "MΩ",
  status: "direct",
  note: "With equipment connected 250 V may be used, live conductors joined.",
  rows: [
    { circuit: "SELV or PELV", testVolts: 250, leastMegohms: 0.5 },
    { circuit: "up to 500 V", testVolts: 500, leastMegohms: 1 },
    { circuit: "above 500 V", testVolts: 1000, leastMegohms: 1, status: "memory" },
  ],
})
