/** Supplementary bond: by what it joins and whether something protects it from damage (544.2, 543.1.1). */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { leastSupplementaryMm2 } from "../../leastSupplementaryMm2"
import { asks, defineRule, fails, passes } from "../../Rule"
import { sayItem, sayMm2, startWithNumber } from "../../sayings"

export const supplementarySize = defineRule({
  name: "supplementarySize",
  title: "A supplementary bond is no smaller than what it joins asks for.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "544.2.1 to 544.2.3, 543.1.1" },
  status: "direct",
  of: ["supplementary_bond"],
  needs: z.object({
    item: knownAs.item,
    csaMm2: knownAs.positive,
    between: z.enum(["two exposed", "exposed and extraneous", "two extraneous"]),
    protectiveMm2: knownAs.positive.optional(),
    bondProtected: knownAs.flag,
  }),
  limits: {},
  judge({ item, csaMm2, between, protectiveMm2, bondProtected }) {
    const wanted = { between, mechanicallyProtected: bondProtected, ...(protectiveMm2 && { protectiveMm2 }) }
    const least = leastSupplementaryMm2(wanted)
    if (least === null) return asks("protectiveMm2")
    const how = `${bondProtected ? "" : "not "}protected against damage, between ${between} parts`
    const says = {
      shown: `${csaMm2} mm², at least ${least} mm²: ${how}.`,
      inputs: { csaMm2, leastMm2: least, between, protectiveMm2: protectiveMm2 ?? null, bondProtected },
      working: { formula: "share of the protective conductor, and the floors", numbers: how, result: `${least} mm²` },
    }
    const head = `${sayItem(item)}: ${sayMm2(csaMm2)} is`
    return csaMm2 >= least
      ? passes({ ...says, spoken: `${head} big enough. ${startWithNumber(least)} is the least.` })
      : fails("stop", {
          ...says,
          spoken: `${head} too small. ${startWithNumber(least)} is the least. Fit a bigger one.`,
        })
  },
  examples: [
    {
      given: { item: "bathroom_supplementary", csaMm2: 4, between: "two extraneous", bondProtected: false },
      verdict: "passes",
    },
    {
      given: { item: "bathroom_supplementary", csaMm2: 2.5, between: "two extraneous", bondProtected: false },
      verdict: "fails",
      severity: "stop",
    },
    {
      given: { item: "bathroom_supplementary", csaMm2: 2.5, between: "two extraneous", bondProtected: true },
      verdict: "passes",
    },
    {
      given: { item: "bathroom_supplementary", csaMm2: 1.5, between: "two extraneous", bondProtected: true },
      verdict: "fails",
    },
    {
      given: { item: "bathroom_supplementary", csaMm2: 4, between: "two exposed", bondProtected: true },
      verdict: "asks",
    },
    {
      given: {
        item: "bathroom_supplementary",
        csaMm2: 4,
        between: "two exposed",
        protectiveMm2: 6,
        bondProtected: true,
      },
      verdict: "fails",
    },
    {
      given: {
        item: "bathroom_supplementary",
        csaMm2: 6,
        between: "two exposed",
        protectiveMm2: 6,
        bondProtected: true,
      },
      verdict: "passes",
    },
    {
      given: {
        item: "bathroom_supplementary",
        csaMm2: 4,
        between: "exposed and extraneous",
        protectiveMm2: 6,
        bondProtected: true,
      },
      verdict: "passes",
    },
    {
      given: {
        item: "bathroom_supplementary",
        csaMm2: 2.5,
        between: "exposed and extraneous",
        protectiveMm2: 6,
        bondProtected: true,
      },
      verdict: "fails",
    },
    { given: { item: "bathroom_supplementary", csaMm2: 4 }, verdict: "asks" },
  ],
})
