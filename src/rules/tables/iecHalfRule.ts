/** The share of the largest protective conductor that an international main bond has. From memory. */
import { defineTable } from "../Table"

export const iecHalfRule = defineTable({
  title: "Main bond, international rule: share of the largest protective earthing conductor in the installation",
  source: { standard: "IEC 60364-5-54", edition: "2011", clause: "544.1" },
  unit: "factor",
  status: "memory",
  note: "The British rule halves the earthing conductor instead.",
  rows: [{ share: 0.5 }],
})
