/** Bonding conductor of Australia and New Zealand: one figure from memory, so it only ever makes a note. */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { defineRule, fails, passes } from "../../Rule"
import { sayItem, sayMm2 } from "../../sayings"
import { auBonding } from "../../tables/auBonding"

const { leastBondMm2 } = auBonding.rows[0]!

export const auBondSize = defineRule({
  name: "auBondSize",
  title: "A bonding conductor against a figure from memory: see the book.",
  source: auBonding.source,
  status: auBonding.status,
  of: ["main_bond"],
  needs: z.object({ item: knownAs.item, csaMm2: knownAs.positive }),
  limits: { leastBondMm2 },
  judge({ item, csaMm2 }) {
    const says = {
      spoken: `${sayItem(item)}: check the book for ${sayMm2(csaMm2)}.`,
      shown: `${csaMm2} mm² against ${leastBondMm2} mm².`,
      inputs: { csaMm2, leastBondMm2 },
    }
    return csaMm2 >= leastBondMm2 ? passes({ ...says, which: "above" }) : fails("warn", { ...says, which: "below" })
  },
  examples: [
    { given: { item: "water", csaMm2: 4 }, verdict: "fails", severity: "note", which: "above" },
    { given: { item: "water", csaMm2: 2.5 }, verdict: "fails", severity: "note", which: "below" },
    { given: { item: "water" }, verdict: "asks" },
  ],
})
