/**
 * The two sentences about a reading and its band. What is wrong when a bond reads too low is not what is wrong when it
 * reads too high, so each has its own causes and its own thing to do.
 */
import type { Qualifier } from "../../facts/Quantity"
import type { Instrument } from "../../facts/Situation"
import type { OhmsBand } from "../expectedOhms"
import { figure, hundredths } from "../figures"
import type { Says } from "../Rule"
import { sayAbout, sayItem, sayMetres, sayMm2, sayOhms } from "../sayings"
import { continuityAdvice } from "../tables/continuityAdvice"
import { whatFits } from "../whatFits"

const { acceptOhms, quotedOhms } = continuityAdvice.rows[0]!

/** A reading of a conductor whose size and length are known. */
export interface ReadRun {
  item: string
  csaMm2: number
  lengthM: number
  ohmsQualifier?: Qualifier | undefined
  instrument: Instrument
}

const describeInstrument = ({ percent, digits, digitOhms, assumed }: Instrument) =>
  `instrument error ${percent} % and ${digits} digits of ${digitOhms} Ω${assumed ? " (assumed until it is set)" : ""}`

const shownBand = ({ csaMm2, lengthM, instrument }: ReadRun, band: OhmsBand) =>
  `${lengthM} m of ${csaMm2} mm² copper should read about ${hundredths(band.nominal)} Ω, and anything from ` +
  `${hundredths(band.low)} to ${hundredths(band.high)} Ω may be good: ${describeInstrument(instrument)}, 0 to 30 °C, ` +
  "the real conductor, the paced length and the joints."

/** Both sentences, the inputs and the sum; `which` is left out where the reading fits. */
export const sayReading = (given: ReadRun, ohms: number, band: OhmsBand, which?: "below" | "above"): Says => {
  const { item, csaMm2, lengthM, instrument } = given
  const head = `${sayItem(item)}: ${sayOhms(ohms)} is`
  const run = `${sayMetres(lengthM)} of ${sayMm2(csaMm2)}`
  const expected = `Look for ${sayAbout(band.nominal)}.`
  const spoken = {
    below: `${head} too low. ${expected} See that one end is off, then test again.`,
    above: `${head} too high. ${expected} Look at the joints, then test again.`,
    none: `${sayItem(item)}: ${sayOhms(ohms)} fits ${run}.`,
  }[which ?? "none"]
  const causes = {
    below:
      "Nulled twice, a second path because the other end was not taken off, another pipe, or a shorter or bigger " +
      "conductor than was said.",
    above:
      "A poor joint, a dirty pipe, leads not nulled, or a longer or smaller conductor than was said. " +
      `Guidance as quoted accepts up to ${acceptOhms} Ω where less is expected; ${quotedOhms} Ω is not a limit.`,
    none: ohms > quotedOhms ? `The ${quotedOhms} Ω that is often named is not a limit.` : "",
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
