/**
 * Two figures that go round about bonds. 0.05 Ω is what some 15 m of 6 mm² or 25 m of 10 mm² measure, and is often taken
 * for a limit, which it is not. The newer guidance accepts up to 0.1 Ω where less than that is expected.
 */
import { defineTable } from "../Table"

export const continuityAdvice = defineTable({
  title: "Ohms of a main bond that guidance speaks of",
  source: { standard: "IET GN3", edition: "9th, 2022, as quoted", clause: "p. 61" },
  unit: "Ω",
  status: "direct",
  rows: [{ acceptOhms: 0.1, quotedOhms: 0.05 }],
})
