/** The filter before the ear, against what a second-order Butterworth high-pass is known to do. */
import { expect, test } from "vitest"
import { createHighPass } from "../../src/speech/highPass"

const rateHz = 16_000
const gainDb = (hz: number) => {
  const tone = Float32Array.from({ length: rateHz }, (_, n) => Math.cos((2 * Math.PI * hz * n) / rateHz))
  const out = createHighPass(rateHz)(tone).slice(rateHz / 2)
  return 20 * Math.log10(out.reduce((most, x) => Math.max(most, Math.abs(x)), 0))
}

test("half the power passes at the corner, and a quarter of the frequency is down by 24 dB", () => {
  expect(gainDb(90)).toBeCloseTo(-3.01, 1)
  expect(gainDb(22.5)).toBeCloseTo(-24.1, 0)
})

test("mains hum is weakened and speech is not", () => {
  expect(gainDb(50)).toBeLessThan(-10)
  expect(Math.abs(gainDb(300))).toBeLessThan(0.1)
  expect(Math.abs(gainDb(3_000))).toBeLessThan(0.1)
})

test("a constant offset is gone, and the filter goes on where the last piece ended", () => {
  const offset = new Float32Array(rateHz).fill(0.3)
  expect(Math.abs(createHighPass(rateHz)(offset).at(-1)!)).toBeLessThan(1e-6)
  const [whole, pieces] = [createHighPass(rateHz), createHighPass(rateHz)]
  const first = pieces(offset.slice(0, 100))
  expect([...first, ...pieces(offset.slice(100))]).toEqual([...whole(offset)])
})
