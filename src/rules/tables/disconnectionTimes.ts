/** How fast a fault must be cut off at 230 V. "Final" means circuits up to 63 A with sockets, or up to 32 A without. */
import { defineTable } from "../Table"

export const disconnectionTimes = defineTable({
  title: "Longest disconnection time at 230 V a.c.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "411.3.2.2 to 411.3.2.4, Table 41.1" },
  unit: "s",
  status: "direct",
  note: "In a TT system with all extraneous parts bonded and an overcurrent device, the TN times may be used.",
  rows: [
    { system: "TN", circuit: "final", seconds: 0.4 },
    { system: "TT", circuit: "final", seconds: 0.2 },
    { system: "TN", circuit: "distribution", seconds: 5 },
    { system: "TT", circuit: "distribution", seconds: 1 },
  ],
})
