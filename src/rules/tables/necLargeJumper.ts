/** Share of the area of the supply conductors that a bonding jumper has above the end of its table. */
import { defineTable } from "../Table"

export const necLargeJumper = defineTable({
  title: "Bonding jumper above the end of its table, as a share of the area",
  source: { standard: "NEC", edition: "an older one, as quoted", clause: "Table 250.102(C)(1) note 1" },
  unit: "factor",
  status: "direct",
  rows: [{ share: 0.125 }],
})
