/** The voltage that loop impedances are reckoned with: nominal, and the share of it that is sure to be there. */
import { defineTable } from "../Table"

export const supplyVoltage = defineTable({
  title: "Nominal voltage to earth and its least factor",
  source: { standard: "BS 7671", edition: "2018", clause: "411.4.4" },
  unit: "V, factor",
  status: "direct",
  rows: [{ volts: 230, leastFactor: 0.95 }],
})
