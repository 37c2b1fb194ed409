/** What is added to silence: less than can be heard, the same every time, and never a stretch of noughts. */
import { expect, test } from "vitest"
import { dither } from "../../src/speech/dither"

const silence = new Float32Array(16_000)

test("no sample changes by more than a step of 16-bit sound", () => {
  expect(Math.max(...dither(silence).map(Math.abs))).toBeLessThanOrEqual(1 / 32_768)
})

test("silence holds no stretch of noughts any more, and leans to neither side", () => {
  const noise = dither(silence)
  expect(noise.filter((sample) => sample === 0).length).toBeLessThan(10)
  expect(Math.abs(noise.reduce((sum, sample) => sum + sample, 0)) / noise.length).toBeLessThan(1e-6)
})

test("the same samples give the same", () => {
  expect(dither(silence)).toEqual(dither(silence))
})
