/**
 * A bond reads what its size and length make it read, as far as the meter can tell. Too low and too high are different
 * findings, because different things are wrong. 0.05 Ω decides nothing here: it is a length of cable in disguise.
 */
import { z } from "zod"
import { expectedOhms, usualInstrument } from "../expectedOhms"
import { knownAs } from "../knownAs"
import { wantsReading } from "../partKind"
import { asks, defineRule, fails, notApplicable, passes, type Verdict } from "../Rule"
import { type ReadRun, sayReading } from "./sayReading"

const needs = z.object({
  item: knownAs.item,
  csaMm2: knownAs.positive.optional(),
  lengthM: knownAs.positive.optional(),
  ohms: knownAs.ohms.optional(),
  ohmsQualifier: knownAs.qualifier.optional(),
  instrument: knownAs.instrument,
})

const judgeReading = (run: ReadRun, ohms: number): Verdict => {
  const expected = expectedOhms(run)
  if (!expected.ok) return notApplicable(expected.because)
  const band = expected.value
  if (ohms < band.low) return fails("warn", sayReading(run, ohms, band, "below"))
  if (run.ohmsQualifier !== undefined && ohms > band.high) return notApplicable("Less than a high figure says nothing.")
  return ohms > band.high ? fails("warn", sayReading(run, ohms, band, "above")) : passes(sayReading(run, ohms, band))
}

const judge = ({ csaMm2, lengthM, ohms, ...rest }: z.infer<typeof needs>): Verdict => {
  if (ohms === undefined && !wantsReading(rest.item)) return notApplicable("It was not read, and need not be.")
  if (csaMm2 === undefined || lengthM === undefined || ohms === undefined) {
    const named = { csaMm2, lengthM, ohms }
    return asks(...(["csaMm2", "lengthM", "ohms"] as const).filter((name) => named[name] === undefined))
  }
  if (ohms === null || rest.ohmsQualifier === ">") return notApplicable("An over-range reading has a rule of its own.")
  return judgeReading({ ...rest, csaMm2, lengthM }, ohms)
}

const water = { item: "water", instrument: usualInstrument }

export const readingFitsConductor = defineRule({
  name: "readingFitsConductor",
  title: "A bond reads what its size and length make it read.",
  source: { standard: "IEC 60228", edition: "2004", clause: "Table 2, with the instrument's error" },
  status: "derived",
  of: ["main_bond", "earthing_conductor", "supplementary_bond"],
  needs,
  limits: {},
  judge,
  examples: [
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.05 }, verdict: "passes" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.01 }, verdict: "fails", severity: "warn", which: "below" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.02 }, verdict: "passes" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.08 }, verdict: "passes" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.09 }, verdict: "fails", severity: "warn", which: "above" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.5 }, verdict: "fails", severity: "warn", which: "above" },
    { given: { ...water, csaMm2: 10, lengthM: 8, ohms: 0.03 }, verdict: "passes" },
    { given: { ...water, csaMm2: 10, lengthM: 8, ohms: 0 }, verdict: "passes" },
    { given: { ...water, csaMm2: 16, lengthM: 14, ohms: 0.05 }, verdict: "passes" },
    { given: { ...water, csaMm2: 16, lengthM: 14, ohms: 0.06 }, verdict: "fails", which: "above" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.01, ohmsQualifier: "<" }, verdict: "fails", which: "below" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 0.5, ohmsQualifier: "<" }, verdict: "notApplicable" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: 99.9, ohmsQualifier: ">" }, verdict: "notApplicable" },
    { given: { ...water, csaMm2: 10, lengthM: 26, ohms: null, ohmsQualifier: ">" }, verdict: "notApplicable" },
    {
      given: {
        ...water,
        csaMm2: 10,
        lengthM: 26,
        ohms: 0.04,
        instrument: { ...usualInstrument, percent: 0, digits: 0 },
      },
      verdict: "fails",
      which: "below",
    },
    {
      given: {
        ...water,
        csaMm2: 10,
        lengthM: 26,
        ohms: 0.041,
        instrument: { ...usualInstrument, percent: 0, digits: 0 },
      },
      verdict: "passes",
    },
    { given: { ...water, item: "earthing_conductor", csaMm2: 16 }, verdict: "notApplicable" },
    { given: { ...water, item: "earthing_conductor", csaMm2: 16, ohms: 0.5 }, verdict: "asks" },
    {
      given: { ...water, item: "earthing_conductor", csaMm2: 16, lengthM: 3, ohms: 0.5 },
      verdict: "fails",
      which: "above",
    },
    { given: { ...water, csaMm2: 10, lengthM: 26 }, verdict: "asks" },
    { given: { ...water, csaMm2: 10, ohms: 0.05 }, verdict: "asks" },
    { given: { ...water, lengthM: 26, ohms: 0.05 }, verdict: "asks" },
  ],
})
