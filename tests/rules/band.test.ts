/** The band of an expected reading, worked by hand: 10 mm², 26 m, so 0.04758 Ω in the middle. */
import { expect, test } from "vitest"
import { expectedOhms, usualInstrument } from "../../src/rules/expectedOhms"
import { readingFitsConductor } from "../../src/rules/universal/readingFitsConductor"
import { whatFits } from "../../src/rules/whatFits"
import { must } from "./comparing"
import { instrument } from "./situations"

const run = { csaMm2: 10, lengthM: 26 }
const exact = { percent: 0, digits: 0, digitOhms: 0.01, assumed: false }

test("with an exact meter at a known temperature only conductor, length and joints are left", () => {
  const band = must(expectedOhms({ ...run, temperatureC: 20, instrument: exact }))
  expect(band.nominal).toBeCloseTo(0.04758, 10)
  // √(8² + 10²) = 12.81 % under; 10 % and 0.01 Ω of joints over.
  expect(band.low).toBeCloseTo(0.04758 * (1 - Math.hypot(0.08, 0.1)), 10)
  expect(band.high).toBeCloseTo(0.04758 * 1.1 + 0.01, 10)
})

test("an unknown temperature widens it by 20 K down and 10 K up", () => {
  const band = must(expectedOhms({ ...run, instrument: exact }))
  expect(band.low).toBeCloseTo(0.04758 * (1 - Math.hypot(0.08, 0.1, 20 * 0.00393)), 10)
  expect(band.high).toBeCloseTo(0.04758 * (1 + Math.hypot(0.1, 10 * 0.00393)) + 0.01, 10)
})

test("the usual meter adds 2 % and three digits, which at a few hundredths is most of the band", () => {
  const band = must(expectedOhms(run))
  expect(usualInstrument).toEqual(instrument)
  expect(band.instrumentOhms).toBeCloseTo(0.04758 * 0.02 + 0.03, 10)
  expect(band.low).toBeCloseTo(
    0.04758 - Math.hypot(0.04758 * 0.08, 0.04758 * 0.1, 0.04758 * 0.0786, band.instrumentOhms),
    10,
  )
  expect(band.high).toBeCloseTo(0.04758 + Math.hypot(0.04758 * 0.1, 0.04758 * 0.0393, band.instrumentOhms) + 0.01, 10)
})

test("a warm conductor reads more, and its band moves with it", () => {
  const cold = must(expectedOhms({ ...run, temperatureC: 0 }))
  const warm = must(expectedOhms({ ...run, temperatureC: 30 }))
  expect(warm.nominal / cold.nominal).toBeCloseTo(1.0393 / 0.9214, 6)
})

test("a reading that does not fit says what it would fit, and nothing silly", () => {
  const said = { ...run, instrument }
  expect(whatFits(0.14, { ...said, lengthM: 14 })).toBe(
    "0.14 Ω fits about 77 m of 10 mm², or 14 m of 1.5 or 2.5 mm². With the point one place over, 0.014 Ω would fit.",
  )
  expect(whatFits(0.5, said)).toContain("With the point one place over, 0.05 Ω would fit.")
  expect(whatFits(0, { ...said, lengthM: 30 })).toBe("0 Ω fits 30 m of 185 or 240 mm².")
  expect(whatFits(500, said)).toBe("")
})

test("the band's own ends are inside it, and it never goes below nought", () => {
  const band = must(expectedOhms(run))
  const judge = (ohms: number) => readingFitsConductor.judge({ item: "water", ...run, ohms, instrument })
  expect([band.low, band.high].map((ohms) => judge(ohms).verdict)).toEqual(["passes", "passes"])
  expect(judge(band.low - 1e-9)).toMatchObject({ which: "below" })
  expect(judge(band.high + 1e-9)).toMatchObject({ which: "above" })
  const under = { item: "water", ...run, ohmsQualifier: "<", instrument }
  expect(readingFitsConductor.judge({ ...under, ohms: band.high }).verdict).toBe("passes")
  expect(must(expectedOhms({ csaMm2: 10, lengthM: 3 })).low).toBe(0)
})

test("a hint names a length between 1 and 200 m only, and a place of the point only for what was read", () => {
  const said = { csaMm2: 10, lengthM: 26, instrument }
  expect(whatFits(0.00183, said)).toContain("about 1 m of 10 mm²")
  expect(whatFits(0.0018, said)).not.toContain("of 10 mm²")
  expect(whatFits(0.366, said)).toContain("about 200 m of 10 mm²")
  expect(whatFits(0.367, said)).not.toContain("of 10 mm²")
  expect(whatFits(0.88, said)).toContain("With the point one place over, 0.088 Ω would fit.")
  expect(whatFits(0.9, said)).not.toContain("point")
  expect(whatFits(0.002, said)).toContain("With the point one place over, 0.02 Ω would fit.")
})

test("a hint counts the ends of a band, and one size is enough for it", () => {
  const said = { csaMm2: 10, lengthM: 26, instrument }
  expect(whatFits(must(expectedOhms({ csaMm2: 16, lengthM: 26 })).high, said)).toContain("26 m of 6 or 16 mm²")
  expect(whatFits(0.04, { ...said, instrument: exact })).toContain("or 26 m of 16 mm²")
})
