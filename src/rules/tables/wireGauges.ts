/** American wire sizes in circular mils, so that sizes in gauge and in kcmil can be set side by side and added. */
import { defineTable } from "../Table"

export const wireGauges = defineTable({
  title: "Area of American wire gauges",
  source: { standard: "ASTM B258", edition: "by its formula", clause: "diameter = 0.005 in × 92^((36 − n)/39)" },
  unit: "kcmil",
  status: "derived",
  rows: [
    { size: "14", kcmil: 4.107 },
    { size: "12", kcmil: 6.53 },
    { size: "10", kcmil: 10.38 },
    { size: "8", kcmil: 16.51 },
    { size: "6", kcmil: 26.25 },
    { size: "4", kcmil: 41.74 },
    { size: "3", kcmil: 52.63 },
    { size: "2", kcmil: 66.37 },
    { size: "1", kcmil: 83.69 },
    { size: "1/0", kcmil: 105.5 },
    { size: "2/0", kcmil: 133.1 },
    { size: "3/0", kcmil: 167.8 },
    { size: "4/0", kcmil: 211.6 },
  ],
})
