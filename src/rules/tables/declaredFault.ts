/** The most fault current that distributors declare. Others declare 19.6 and 25.9 kA: ask the one that supplies. */
import { defineTable } from "../Table"

export const declaredFault = defineTable({
  title: "Declared most prospective fault current",
  source: { standard: "distributor information", edition: "as published", clause: "536.4.201" },
  unit: "kA",
  status: "direct",
  note: "At the joint in the street it may be 19.6 kA; after more than 2 m of service cable it is below 16 kA.",
  rows: [
    { phases: 1, mostKa: 16 },
    { phases: 3, mostKa: 25 },
  ],
})
