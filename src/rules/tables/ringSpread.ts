/** How far apart the ends of a ring may read, and how its lines and protective conductor compare. */
import { defineTable } from "../Table"

export const ringSpread = defineTable({
  title: "Ring final circuit: spread of like readings",
  source: { standard: "guidance", edition: "GN3 as quoted", clause: "ring final circuits, steps 1 to 3" },
  unit: "Ω",
  status: "direct",
  rows: [{ spreadOhms: 0.05, ratioTolerance: 0.05 }],
})
