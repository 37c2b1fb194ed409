/** Least protective conductor that is not part of a cable and not in a common enclosure with live conductors. */
import { defineTable } from "../Table"

export const separateProtective = defineTable({
  title: "Least separate protective conductor",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "543.1.1" },
  unit: "mm² copper",
  status: "direct",
  rows: [
    { mechanicallyProtected: true, leastMm2: 2.5 },
    { mechanicallyProtected: false, leastMm2: 4 },
  ],
})
