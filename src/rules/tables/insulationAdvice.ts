/** Below this a circuit is worth a look although it passes. */
import { defineTable } from "../Table"

export const insulationAdvice = defineTable({
  title: "Insulation resistance below which to look for the cause",
  source: { standard: "guidance", edition: "as quoted in a textbook", clause: "none" },
  unit: "MΩ",
  status: "direct",
  rows: [{ lookBelowMegohms: 2 }],
})
