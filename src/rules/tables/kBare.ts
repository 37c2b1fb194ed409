/**
 * k of a bare copper conductor, by how hot it may get where it runs. All from memory.
 */
import { defineTable } from "../Table"

export const kBare = defineTable({
  title: "k of a bare copper conductor",
  source: { standard: "BS 7671", edition: "2018", clause: "Table 54.6" },
  unit: "A·√s/mm²",
  status: "memory",
  note: "Look every figure up before it decides anything.",
  rows: [
    { metal: "copper", insulation: "visible, restricted area", k: 228 },
    { metal: "copper", insulation: "normal conditions", k: 159 },
    { metal: "copper", insulation: "fire risk", k: 138 },
  ],
})
