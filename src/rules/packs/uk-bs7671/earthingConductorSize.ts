/**
 * Earthing conductor: no smaller than its floors, and than the main bonds of a PME supply. By the table of line
 * conductors it is only looked at twice, since a sum with the real fault may allow less.
 */
import { z } from "zod"
import { knownAs } from "../../knownAs"
import { leastBuriedMm2, leastSeparateMm2 } from "../../leastEarthingConductorMm2"
import { leastEverMm2, leastPmeBondMm2 } from "../../leastMainBondMm2"
import { leastProtectiveMm2 } from "../../leastProtectiveMm2"
import { asks, defineRule, fails, notApplicable, passes, type Says, type Verdict } from "../../Rule"
import { sayMm2, startWithNumber } from "../../sayings"

interface Given {
  csaMm2: number
  arrangement?: "TN-S" | "TN-C-S" | "TT" | undefined
  neutralMm2?: number | undefined
  lineMm2?: number | undefined
  buried?: boolean | undefined
  corrosionProtected?: boolean | undefined
  mechanicallyProtected?: boolean | undefined
}

/** The floors that are known to hold, the highest first. */
const floorsOf = (given: Given) => {
  const floors = [
    given.buried
      ? leastBuriedMm2(given)
      : { leastMm2: leastSeparateMm2(true), because: "no separate protective conductor is smaller" },
  ]
  if (given.arrangement === "TN-C-S")
    floors.push({
      leastMm2: given.neutralMm2 === undefined ? leastEverMm2("TN-C-S") : leastPmeBondMm2(given.neutralMm2),
      because: `no less than the main bonds of a PME supply, neutral ${given.neutralMm2 === undefined ? "not known yet" : `${given.neutralMm2} mm²`}`,
    })
  return floors.sort((a, b) => b.leastMm2 - a.leastMm2)
}

const says = ({ csaMm2 }: Given, least: number, because: string, end: string): Says => ({
  spoken: `Earthing conductor: ${sayMm2(csaMm2)} ${end}`,
  shown: `${csaMm2} mm², at least ${least} mm²: ${because}. A distributor may ask for 16 mm² or more.`,
  inputs: { csaMm2, leastMm2: least },
  working: { formula: "the largest of the floors that hold", numbers: because, result: `${least} mm²` },
})

const judgeByTable = (given: Given): Verdict => {
  if (given.lineMm2 === undefined) return notApplicable("The size of the tails is not on record.")
  const least = leastProtectiveMm2(given.lineMm2)
  const because = `line conductor ${given.lineMm2} mm², by Table 54.7`
  return given.csaMm2 >= least
    ? passes(says(given, least, because, "is big enough."))
    : fails("warn", {
        ...says(given, least, because, `is less than the table gives. Work it out for the fault.`),
        which: "by table",
      })
}

const judge = (given: Given): Verdict => {
  const { arrangement, csaMm2, neutralMm2 } = given
  const floor = floorsOf(given)[0]!
  const tooSmall = `is too small. ${startWithNumber(floor.leastMm2)} is the least. Fit a bigger one.`
  if (csaMm2 < floor.leastMm2) return fails("stop", says(given, floor.leastMm2, floor.because, tooSmall))
  if (arrangement === undefined) return asks("arrangement")
  if (arrangement === "TN-C-S" && neutralMm2 === undefined) return asks("neutralMm2")
  const byTable = judgeByTable(given)
  if (byTable.verdict !== "notApplicable" || arrangement !== "TN-C-S") return byTable
  return passes(says(given, floor.leastMm2, floor.because, `is enough for the bonds of this supply.`))
}

export const earthingConductorSize = defineRule({
  name: "earthingConductorSize",
  title: "The earthing conductor is no smaller than its floors.",
  source: { standard: "BS 7671", edition: "2018+A2:2022", clause: "542.3.1, 543.1, 544.1.1" },
  status: "direct",
  of: ["earthing_conductor"],
  needs: z.object({
    csaMm2: knownAs.positive,
    arrangement: knownAs.arrangement.optional(),
    neutralMm2: knownAs.positive.optional(),
    lineMm2: knownAs.positive.optional(),
    buried: knownAs.flag.optional(),
    corrosionProtected: knownAs.flag.optional(),
    mechanicallyProtected: knownAs.flag.optional(),
  }),
  limits: {},
  judge,
  examples: [
    { given: { csaMm2: 10, arrangement: "TN-C-S", neutralMm2: 35 }, verdict: "passes" },
    { given: { csaMm2: 6, arrangement: "TN-C-S", neutralMm2: 35 }, verdict: "fails", severity: "stop" },
    { given: { csaMm2: 6, arrangement: "TN-C-S" }, verdict: "fails", severity: "stop" },
    { given: { csaMm2: 10, arrangement: "TN-C-S" }, verdict: "asks" },
    { given: { csaMm2: 10, arrangement: "TN-C-S", neutralMm2: 50 }, verdict: "fails", severity: "stop" },
    { given: { csaMm2: 16, arrangement: "TN-C-S", neutralMm2: 25, lineMm2: 25 }, verdict: "passes" },
    { given: { csaMm2: 10, arrangement: "TN-C-S", neutralMm2: 25, lineMm2: 25 }, verdict: "fails", severity: "warn" },
    { given: { csaMm2: 16, arrangement: "TN-S", lineMm2: 25 }, verdict: "passes" },
    { given: { csaMm2: 10, arrangement: "TN-S", lineMm2: 25 }, verdict: "fails", severity: "warn", which: "by table" },
    { given: { csaMm2: 1.5, arrangement: "TN-S" }, verdict: "fails", severity: "stop" },
    { given: { csaMm2: 2.5, arrangement: "TN-S" }, verdict: "notApplicable" },
    { given: { csaMm2: 16, arrangement: "TT", buried: true }, verdict: "fails", severity: "stop" },
    { given: { csaMm2: 25, arrangement: "TT", buried: true }, verdict: "notApplicable" },
    { given: { csaMm2: 16, arrangement: "TT", buried: true, corrosionProtected: true }, verdict: "notApplicable" },
    { given: { csaMm2: 10, arrangement: "TT", buried: true, corrosionProtected: true }, verdict: "fails" },
    {
      given: { csaMm2: 2.5, arrangement: "TT", buried: true, corrosionProtected: true, mechanicallyProtected: true },
      verdict: "notApplicable",
    },
    { given: { csaMm2: 16 }, verdict: "asks" },
    { given: { arrangement: "TN-S" }, verdict: "asks" },
  ],
})
