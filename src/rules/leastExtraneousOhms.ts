/**
 * Above how many ohms to the main earthing terminal a part does not bring in a dangerous potential: U/I, less the body.
 * A low reading taken with bonds in place proves nothing: it may come by another path.
 */
import { extraneousTest } from "./tables/extraneousTest"

/** The usual figures: 230 V, a body of 1000 Ω, 10 mA. */
export const usualExtraneousTest = extraneousTest.rows[0]!

/** In ohms. `milliamps` is the current that is accepted through a body of `bodyOhms` (nought to leave it out). */
export const leastExtraneousOhms = (test: { milliamps: number; bodyOhms?: number; volts?: number }): number => {
  const { milliamps, bodyOhms = usualExtraneousTest.bodyOhms, volts = usualExtraneousTest.volts } = test
  return (volts * 1000) / milliamps - bodyOhms
}

export type ExtraneousAnswer = "not extraneous" | "in doubt" | "may be extraneous"

/** By the reading to the main earthing terminal: clear above the figure without a body, in doubt down to the one with it. */
export const isExtraneous = (
  toMetOhms: number,
  milliamps: number = usualExtraneousTest.milliamps,
): ExtraneousAnswer => {
  if (toMetOhms > leastExtraneousOhms({ milliamps, bodyOhms: 0 })) return "not extraneous"
  return toMetOhms > leastExtraneousOhms({ milliamps }) ? "in doubt" : "may be extraneous"
}
