/** Grounding electrode conductors of the United States, by the largest ungrounded conductor, both of copper. */
import { defineTable } from "../Table"

export const necElectrodeConductor = defineTable({
  title: "Copper grounding electrode conductor by the largest ungrounded copper conductor",
  source: { standard: "NEC", edition: "2020 and later, by a public page", clause: "Table 250.66" },
  unit: "AWG or kcmil",
  status: "direct",
  rows: [
    { upToSize: "2", copper: "8" },
    { upToSize: "1/0", copper: "6" },
    { upToSize: "3/0", copper: "4" },
    { upToSize: "350", copper: "2" },
    { upToSize: "600", copper: "1/0" },
    { upToSize: "1100", copper: "2/0" },
    { upToSize: null, copper: "3/0" },
  ],
})
