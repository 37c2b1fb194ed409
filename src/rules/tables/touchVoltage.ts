/** The voltage that may stand between parts that can be touched at once, for the sums of supplementary bonds and TT. */
import { defineTable } from "../Table"

export const touchVoltage = defineTable({
  title: "Touch voltage in an a.c. installation",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "411.5.3, 415.2.2" },
  unit: "V",
  status: "direct",
  rows: [{ volts: 50 }],
})
