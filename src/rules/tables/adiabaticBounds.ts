/** Up to which time the heat of a fault may be reckoned without cooling. */
import { defineTable } from "../Table"

export const adiabaticBounds = defineTable({
  title: "Longest time for the adiabatic sum",
  source: { standard: "BS 7671", edition: "2018", clause: "543.1.3" },
  unit: "s",
  status: "memory",
  rows: [{ mostSeconds: 5 }],
})
