/**
 * What the test for an extraneous part is reckoned with. No regulation demands this test: it is guidance. 22 kΩ and
 * 23 kΩ are the same rule with and without the resistance of a body, so it is always said which one is meant.
 */
import { defineTable } from "../Table"

export const extraneousTest = defineTable({
  title: "Test for an extraneous part: volts, body and current",
  source: { standard: "guidance", edition: "IET GN8 and IEC TS 60479, as quoted", clause: "GN8" },
  unit: "V, Ω and mA, as named",
  status: "direct",
  note: "10 mA: can let go. 30 mA: only argued for where the supply is cut off within 0.4 s. 0.5 mA: can be felt.",
  rows: [{ volts: 230, bodyOhms: 1000, milliamps: 10 }],
})
