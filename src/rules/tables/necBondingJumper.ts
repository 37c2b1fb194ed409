/**
 * Supply-side bonding jumpers of the United States. Only the copper lines were seen worked; the aluminium ends are from
 * memory but for the one of 4/0.
 */
import { defineTable } from "../Table"

export const necBondingJumper = defineTable({
  title: "Bonding jumper by the largest ungrounded conductor, or the sum of parallel ones",
  source: { standard: "NEC", edition: "by worked examples", clause: "Table 250.102(C)(1)" },
  unit: "AWG or kcmil",
  status: "direct",
  note: "Above the last line: an eighth of the area.",
  rows: [
    { upToCopper: "2", upToAluminium: "1/0", copper: "8", aluminium: "6" },
    { upToCopper: "1/0", upToAluminium: "3/0", copper: "6", aluminium: "4" },
    { upToCopper: "3/0", upToAluminium: "250", copper: "4", aluminium: "2" },
    { upToCopper: "350", upToAluminium: "500", copper: "2", aluminium: "1/0" },
    { upToCopper: "600", upToAluminium: "900", copper: "1/0", aluminium: "3/0" },
    { upToCopper: "1100", upToAluminium: "1750", copper: "2/0", aluminium: "4/0" },
  ],
})
