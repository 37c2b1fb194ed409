/**
 * Supplementary bonds by what they join. The rule for protected ones has no floor of its own between exposed parts; the
 * floor of separate protective conductors comes on top (543.1.1).
 */
import { defineTable } from "../Table"

export const supplementaryBonds = defineTable({
  title:
    "Least supplementary bond: share of the connected protective conductor, and floor without mechanical protection",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "544.2.1 to 544.2.3" },
  unit: "mm² copper",
  status: "direct",
  rows: [
    { between: "two exposed", share: 1, leastUnprotectedMm2: 4, leastProtectedMm2: null },
    { between: "exposed and extraneous", share: 0.5, leastUnprotectedMm2: 4, leastProtectedMm2: null },
    { between: "two extraneous", share: null, leastUnprotectedMm2: 4, leastProtectedMm2: 2.5 },
  ],
})
