/** Least earthing conductor in the ground. Without protection against corrosion, a mechanical one changes nothing. */
import { defineTable } from "../Table"

export const buriedEarthing = defineTable({
  title: "Least buried earthing conductor",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "542.3.1, Table 54.1" },
  unit: "mm²",
  status: "direct",
  note: "The general rules of 543 hold as well. 10 mm² of steel with both protections is from memory.",
  rows: [
    { corrosionProtected: true, mechanicallyProtected: true, metal: "copper", leastMm2: 2.5 },
    { corrosionProtected: true, mechanicallyProtected: false, metal: "copper", leastMm2: 16 },
    { corrosionProtected: false, mechanicallyProtected: true, metal: "copper", leastMm2: 25 },
    { corrosionProtected: false, mechanicallyProtected: false, metal: "copper", leastMm2: 25 },
    { corrosionProtected: true, mechanicallyProtected: true, metal: "steel", leastMm2: 10, status: "memory" },
    { corrosionProtected: true, mechanicallyProtected: false, metal: "steel", leastMm2: 16 },
    { corrosionProtected: false, mechanicallyProtected: true, metal: "steel", leastMm2: 50 },
    { corrosionProtected: false, mechanicallyProtected: false, metal: "steel", leastMm2: 50 },
  ],
})
