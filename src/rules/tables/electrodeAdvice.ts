/** Above this an electrode is held to be unsteady. It is advice, never a limit. */
import { defineTable } from "../Table"

export const electrodeAdvice = defineTable({
  title: "Electrode resistance above which it may not stay stable",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "Table 41.5 note" },
  unit: "Ω",
  status: "direct",
  rows: [{ steadyOhms: 200, usualResidualMa: 30 }],
})
