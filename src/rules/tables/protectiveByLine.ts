/** Protective conductor by the size of its line conductor, where both are of one metal and no sum is done. */
import { defineTable } from "../Table"

export const protectiveByLine = defineTable({
  title: "Least protective conductor by the size of the line conductor, same metal",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "543.1.4, Table 54.7" },
  unit: "mm²",
  status: "direct",
  note: "Take the next size up. For another metal multiply by the ratio of the two k.",
  rows: [
    { upToMm2: 16, shareOfLine: 1, fixedMm2: null },
    { upToMm2: 35, shareOfLine: null, fixedMm2: 16 },
    { upToMm2: null, shareOfLine: 0.5, fixedMm2: null },
  ],
})
