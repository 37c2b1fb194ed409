/**
 * Trip times of residual current devices. All from memory: since 2022 one a.c. test at the rated current is enough for
 * verification, and the faster tests belong to the product's own standard.
 */
import { defineTable } from "../Table"

export const rcdTimes = defineTable({
  title: "Trip times of residual current devices by multiple of the rated residual current",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "643.7.1, Appendix 3 Table 3A" },
  unit: "ms",
  status: "memory",
  rows: [
    { type: "general", multiple: 1, leastMs: 0, mostMs: 300 },
    { type: "delayed", multiple: 1, leastMs: 130, mostMs: 500 },
    { type: "general", multiple: 2, leastMs: 0, mostMs: 150 },
    { type: "general", multiple: 5, leastMs: 0, mostMs: 40 },
    { type: "delayed", multiple: 2, leastMs: 60, mostMs: 200 },
    { type: "delayed", multiple: 5, leastMs: 50, mostMs: 150 },
  ],
})
