/**
 * A bond reads what its size and length make it read, as far as the meter can tell. Too low and too high are different
 * findings, because different things are wrong. 0.05 Ω decides nothing here: it is a length of cable in disguise.
 */
import { z } from "zod"
import type { Qualifier } from "../../facts/Quantity"
import type { Instrument } from "../../facts/Situation"
import { expectedOhms, type OhmsBand, usualInstrument } from "../expectedOhms"
import { figure, hundredths } from "../figures"
import { knownAs } from "../knownAs"
import { defineRule, fails, notApplicable, passes, type Says, type Verdict } from "../Rule"
import { sayAbout, sayItem, sayMetres, sayMm2, sayOhms } from "../sayings"
import { continuityAdvice } from "../tables/continuityAdvice"
import { whatFits } from "../whatFits"

const { acceptOhms, quotedOhms } = continuityAdvice.rows[0]!

interface Given {
  item: string
  csaMm2: number
  lengthM: number
  ohms: number | null
  ohmsQualifier?: Qualifier | undefined
  instrument: Instrument
}

const describeInstrument = ({ percent, digits, digitOhms, assumed }: Instrument) =>
  `instrument error ${percent} % and ${digits} digits of ${digitOhms} Ω${assumed ? " (assumed until it is set)" : ""}`

const shownBand = ({ csaMm2, lengthM, instrument }: Given, band: OhmsBand) =>
  `${lengthM} m of ${csaMm2} mm² copper should read about ${hundredths(band.nominal)} Ω, and anything from ` +
  `${hundredths(band.low)} to ${hundredths(band.high)} Ω may be good: ${describeInstrument(instrument)}, 0 to 30 °C, ` +
  "the real conductor, the paced length and the joints."

const says = (given: Given, ohms: number, band: OhmsBand, which?: "below" | "above"): Says => {
  const { item, csaMm2, lengthM, instrument } = given
  const head = `${sayItem(item)}: ${sayOhms(ohms)} is`
  const run = `${sayMetres(lengthM)} of ${sayMm2(csaMm2)}`
  const expected = `Look for ${sayAbout(band.nominal)}.`
  const spoken = {
    below: `${head} too low for ${run}. ${expected} See that one end is off and the leads are nulled once, then test again.`,
    above: `${head} too high for ${run}. ${expected} Look at the joints and the length, then test again.`,
    none: `${sayItem(item)}: ${sayOhms(ohms)} fits ${run}.`,
  }[which ?? "none"]
  const causes = {
    below:
      "Nulled twice, a second path because the other end was not taken off, another pipe, or a shorter or bigger " +
      "conductor than was said.",
    above:
      "A poor joint, a dirty pipe, leads not nulled, or a longer or smaller conductor than was said. " +
      `Guidance as quoted accepts up to ${acceptOhms} Ω where less is expected; ${quotedOhms} Ω is not a limit.`,
    none: "",
  }[which ?? "none"]
  const fits = which === undefined ? "" : ` ${whatFits(ohms, given)}`
  return {
    spoken,
    shown: `${figure(ohms)} Ω. ${shownBand(given, band)} ${causes}${fits}`.trim(),
    ...(which && { which }),
    inputs: {
      ohms,
      csaMm2,
      lengthM,
      expectedOhms: Number(figure(band.nominal)),
      lowOhms: Number(figure(band.low)),
      highOhms: Number(figure(band.high)),
      instrumentPercent: instrument.percent,
      instrumentDigits: instrument.digits,
      instrumentAssumed: instrument.assumed,
    },
    working: {
      row: `${csaMm2} mm² copper: ${figure(band.ohmsPerM * 1000)} Ω/km at 20 °C`,
      formula: "ohms = ohms per metre × length",
      numbers: `${figure(band.ohmsPerM)} Ω/m × ${lengthM} m`,
      result: `${figure(band.nominal)} Ω, band ${figure(band.low)} to ${figure(band.high)} Ω`,
    },
  }
}

const judge = (given: Given): Verdict => {
  const { ohms, ohmsQualifier } = given
  if (ohms === null || ohmsQualifier === ">") return notApplicable("An over-range reading has a rule of its own.")
  const expected = expectedOhms(given)
  if (!expected.ok) return notApplicable(expected.because)
  const band = expected.value
  if (ohms < band.low) return fails("warn", says(given, ohms, band, "below"))
  if (ohmsQualifier !== undefined && ohms > band.high) return notApplicable("Less than a high figure says nothing.")
  return ohms > band.high ? fails("warn", says(given, ohms, band, "above")) : passes(says(given, ohms, band))
}

const water = { item: "water", instrument: usualInstrument }

export const readingFitsConductor = defineRule({
  name: "readingFitsConductor",
  title: "A bond reads what its size and length make it read.",
  source: { standard: "IEC 60228", edition: "2004", clause: "Table 2, with the instrument's error" },
  status: "derived",
  of: ["main_bond", "earthing_conductor", "supplementary_bond"],
  needs: z.object({
    item: knownAs.item,
    csaMm2: knownAs.positive,
    lengthM: knownAs.positive,
    ohms: knownAs.ohms,
    ohmsQualifier: knownAs.qualifier.optional(),
    instrument: knownAs.instrument,
  }),
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
    { given: { ...water, csaMm2: 10, lengthM: 26 }, verdict: "asks" },
    { given: { ...water, csaMm2: 10, ohms: 0.05 }, verdict: "asks" },
    { given: { ...water, lengthM: 26, ohms: 0.05 }, verdict: "asks" },
  ],
})
