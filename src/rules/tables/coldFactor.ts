/** What a loop may measure cold as a share of the figure for warm conductors: a rule of thumb for 10 to 70 °C. */
import { defineTable } from "../Table"

export const coldFactor = defineTable({
  title: "Share of the tabulated loop impedance that may be measured cold",
  source: { standard: "BS 7671", edition: "2018", clause: "Appendix 3" },
  unit: "factor",
  status: "direct",
  rows: [{ factor: 0.8 }],
})
