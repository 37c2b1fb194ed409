/** Bonding figures of Australia and New Zealand, both from memory: a reason to open the book and no more. */
import { defineTable } from "../Table"

export const auBonding = defineTable({
  title: "Least bonding conductor, and most ohms of the main earthing conductor",
  source: { standard: "AS/NZS 3000", edition: "unknown", clause: "5.6.3.2, 8.3.5.2" },
  unit: "mm² copper, Ω",
  status: "memory",
  rows: [{ leastBondMm2: 4, mostOhms: 0.5 }],
})
