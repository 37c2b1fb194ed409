/**
 * How many times its rating makes a circuit-breaker open at once. Type D needs twice as much for 0.4 s as is reckoned
 * for 5 s, where a training article is the only witness.
 */
import { defineTable } from "../Table"

export const breakerCurrents = defineTable({
  title: "Current that operates a circuit-breaker at once, in multiples of its rating",
  source: { standard: "BS 7671", edition: "2018", clause: "411.4.4, Table 41.3" },
  unit: "multiple",
  status: "direct",
  rows: [
    { device: "B", upToSeconds: 5, multiple: 5 },
    { device: "C", upToSeconds: 5, multiple: 10 },
    { device: "D", upToSeconds: 0.4, multiple: 20 },
    { device: "D", upToSeconds: 5, multiple: 10 },
  ],
})
