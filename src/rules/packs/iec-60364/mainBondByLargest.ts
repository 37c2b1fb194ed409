/**
 * Main bond by the international rule. Its floor was seen; that it is half of the largest protective conductor is from
 * memory, so above the floor there is no verdict, only a note.
 */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { nextSizeUp } from "../../nextSizeUp"
import { asks, defineRule, fails, passes } from "../../Rule"
import { sayItem, sayMm2, startWithNumber } from "../../sayings"
import { iecBondLimits } from "../../tables/iecBondLimits"
import { iecHalfRule } from "../../tables/iecHalfRule"

const { leastMm2, mostMm2 } = iecBondLimits.rows.find((row) => row.metal === "copper")!

export const mainBondByLargest = defineRule({
  name: "mainBondByLargest",
  title: "A copper main bond is 6 mm² or more; beyond that see the book.",
  source: iecBondLimits.source,
  status: "direct",
  of: ["main_bond"],
  needs: z.object({ item: knownAs.item, csaMm2: knownAs.positive, earthingMm2: knownAs.positive.optional() }),
  limits: { leastMm2 },
  judge({ item, csaMm2, earthingMm2 }) {
    const head = `${sayItem(item)}: ${sayMm2(csaMm2)} is`
    const inputs = { csaMm2, leastMm2, earthingMm2: earthingMm2 ?? null }
    if (csaMm2 < leastMm2)
      return fails("stop", {
        spoken: `${head} too small. ${startWithNumber(leastMm2)} is the least. Fit a bigger one.`,
        shown: `${csaMm2} mm² is under ${leastMm2} mm², the least copper main bond.`,
        inputs,
      })
    if (earthingMm2 === undefined) return asks("earthingMm2")
    const half = earthingMm2 * iecHalfRule.rows[0]!.share
    const least = nextSizeUp(Math.min(Math.max(half, leastMm2), mostMm2 ?? half))!
    const shown = `${csaMm2} mm². Half of the largest protective conductor, taken as ${earthingMm2} mm², gives ${least} mm².`
    return csaMm2 >= least
      ? passes({
          spoken: `${head} big enough by the rule. Check the book.`,
          shown,
          inputs,
          status: iecHalfRule.status,
        })
      : fails("warn", {
          spoken: `${head} too small by the rule. Check the book.`,
          shown,
          inputs,
          status: iecHalfRule.status,
        })
  },
  examples: [
    { given: { item: "water", csaMm2: 4 }, verdict: "fails", severity: "stop" },
    { given: { item: "water", csaMm2: 6 }, verdict: "asks" },
    { given: { item: "water", csaMm2: 6, earthingMm2: 10 }, verdict: "fails", severity: "note" },
    { given: { item: "water", csaMm2: 6, earthingMm2: 16 }, verdict: "fails", severity: "note" },
    { given: { item: "water" }, verdict: "asks" },
  ],
})
