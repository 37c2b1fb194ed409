/**
 * Main bond: big enough for the supply. What is known to be too small for any supply of its kind is said at once, even
 * while the size that decides is still missing; nothing passes before that size is known.
 */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { leastEverMm2, leastMainBondMm2 } from "../../leastMainBondMm2"
import type { ValueName } from "../../namedValues"
import { asks, defineRule, fails, passes, type Says, type Verdict } from "../../Rule"
import { sayItem, sayMm2, startWithNumber } from "../../sayings"

interface Given {
  item: string
  csaMm2: number
  arrangement?: "TN-S" | "TN-C-S" | "TT" | undefined
  neutralMm2?: number | undefined
  earthingMm2?: number | undefined
}

/** Which size decides, and how, for the screen. */
const reasonFor = ({ arrangement, neutralMm2, earthingMm2 }: Given, least: number) => {
  if (arrangement === "TN-C-S" && neutralMm2 !== undefined)
    return {
      row: `neutral ${neutralMm2} mm²: bond ${least} mm²`,
      formula: "least bond by the size of the supply neutral",
      numbers: `neutral ${neutralMm2} mm² copper equivalent`,
      why: `A PME supply with a neutral of ${neutralMm2} mm² copper equivalent needs a bond of at least ${least} mm².`,
    }
  if (arrangement !== "TN-C-S" && earthingMm2 !== undefined)
    return {
      formula: "half the earthing conductor, at least 6 mm², no more than 25 mm² needed, next size up",
      numbers: `${earthingMm2} mm² / 2 = ${earthingMm2 / 2} mm²`,
      why:
        `Half the ${earthingMm2} mm² earthing conductor asks for at least ${least} mm². That is the fitted size: ` +
        "the rule counts the size that is required, which may be less.",
    }
  return {
    formula: "least bond of any supply of this kind",
    numbers: arrangement ?? "arrangement not known yet",
    why: `No ${arrangement === "TN-C-S" ? "PME " : ""}supply needs less than ${least} mm²; this one may need more.`,
  }
}

const sayings = (given: Given, least: number, fits: boolean): Says => {
  const { why, ...working } = reasonFor(given, least)
  const head = `${sayItem(given.item)}: ${sayMm2(given.csaMm2)} is`
  const leastWords = `${startWithNumber(least)} is the least.`
  return {
    spoken: fits ? `${head} big enough. ${leastWords}` : `${head} too small. ${leastWords} Fit a bigger one.`,
    shown: `${given.csaMm2} mm² is ${fits ? "big enough" : "too small"}. ${why} Copper on both sides.`,
    inputs: {
      csaMm2: given.csaMm2,
      leastMm2: least,
      arrangement: given.arrangement ?? null,
      neutralMm2: given.neutralMm2 ?? null,
      earthingMm2: given.earthingMm2 ?? null,
    },
    working: { ...working, result: `${least} mm²` },
  }
}

const judge = (given: Given): Verdict => {
  const { arrangement, csaMm2 } = given
  const least = arrangement === undefined ? null : leastMainBondMm2({ ...given, arrangement })
  if (least !== null) {
    const fits = csaMm2 >= least
    return fits ? passes(sayings(given, least, true)) : fails("stop", sayings(given, least, false))
  }
  const decides: ValueName = arrangement === "TN-C-S" ? "neutralMm2" : "earthingMm2"
  const wants: ValueName[] = arrangement === undefined ? ["arrangement"] : [decides]
  const leastEver = leastEverMm2(arrangement)
  return csaMm2 < leastEver ? fails("stop", { ...sayings(given, leastEver, false), wants }) : asks(...wants)
}

export const mainBondSize = defineRule({
  name: "mainBondSize",
  title: "A main bond is no smaller than the supply asks for.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "544.1.1, Table 54.8" },
  status: "direct",
  of: ["main_bond"],
  needs: z.object({
    item: knownAs.item,
    csaMm2: knownAs.positive,
    arrangement: knownAs.arrangement.optional(),
    neutralMm2: knownAs.positive.optional(),
    earthingMm2: knownAs.positive.optional(),
  }),
  limits: {},
  judge,
  examples: [
    { given: { item: "water", arrangement: "TN-C-S", neutralMm2: 25, csaMm2: 10 }, verdict: "passes" },
    { given: { item: "water", arrangement: "TN-C-S", neutralMm2: 25, csaMm2: 6 }, verdict: "fails", severity: "stop" },
    { given: { item: "water", arrangement: "TN-C-S", neutralMm2: 35, csaMm2: 10 }, verdict: "passes" },
    { given: { item: "water", arrangement: "TN-C-S", neutralMm2: 50, csaMm2: 10 }, verdict: "fails", severity: "stop" },
    { given: { item: "water", arrangement: "TN-C-S", neutralMm2: 50, csaMm2: 16 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 95, csaMm2: 16 }, verdict: "fails", severity: "stop" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 95, csaMm2: 25 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 150, csaMm2: 35 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 185, csaMm2: 35 }, verdict: "fails", severity: "stop" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 185, csaMm2: 50 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-C-S", csaMm2: 10 }, verdict: "asks" },
    { given: { item: "gas", arrangement: "TN-C-S", csaMm2: 4 }, verdict: "fails", severity: "stop" },
    { given: { item: "gas", arrangement: "TN-C-S", neutralMm2: 25 }, verdict: "asks" },
    { given: { item: "gas", arrangement: "TN-S", earthingMm2: 16, csaMm2: 10 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-S", earthingMm2: 16, csaMm2: 6 }, verdict: "fails", severity: "stop" },
    { given: { item: "gas", arrangement: "TT", earthingMm2: 10, csaMm2: 6 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TT", earthingMm2: 2.5, csaMm2: 4 }, verdict: "fails", severity: "stop" },
    { given: { item: "gas", arrangement: "TT", earthingMm2: 70, csaMm2: 25 }, verdict: "passes" },
    { given: { item: "gas", arrangement: "TN-S", csaMm2: 10 }, verdict: "asks" },
    { given: { item: "gas", csaMm2: 10 }, verdict: "asks" },
    { given: { item: "gas", csaMm2: 4 }, verdict: "fails", severity: "stop" },
  ],
})
