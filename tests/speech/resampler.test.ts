/** Resampling against sines that are known exactly: what is in the band comes through, what is not is gone. */
import { describe, expect, test } from "vitest"
import { createResampler } from "../../src/speech/resampler"

const toHz = 16_000
const sine = (hz: number, rateHz: number, seconds: number) =>
  Float32Array.from({ length: Math.round(rateHz * seconds) }, (_, n) => Math.sin((2 * Math.PI * hz * n) / rateHz))

const through = (samples: Float32Array, rateHz: number, pieceLength = samples.length) => {
  const resampler = createResampler(rateHz, toHz)
  const out: number[] = []
  for (let at = 0; at < samples.length; at += pieceLength)
    out.push(...resampler.push(samples.subarray(at, at + pieceLength)))
  return [...out, ...resampler.flush()]
}

/** The middle, away from both ends, where the sound starts and stops suddenly. */
const middle = <T>(all: T[]) => all.slice(toHz / 20, -toHz / 20)
const peak = (all: number[]) => all.reduce((most, x) => Math.max(most, Math.abs(x)), 0)

describe.each([8_000, 22_050, 44_100, 48_000, 96_000])("from %i Hz to 16 kHz", (rateHz) => {
  test.each([200, 1_000, 3_000])("%i Hz keeps its place and height", (hz) => {
    const got = through(sine(hz, rateHz, 0.5), rateHz)
    const wanted = sine(hz, toHz, 0.5)
    expect(Math.abs(got.length - wanted.length)).toBeLessThanOrEqual(1)
    expect(peak(middle(got.map((x, n) => x - (wanted[n] ?? 0))))).toBeLessThan(0.002)
  })

  test("pieces of any length give the same as the whole", () => {
    const sound = sine(700, rateHz, 0.2)
    const whole = through(sound, rateHz)
    for (const pieceLength of [1, 37, 128, 2048]) {
      const pieces = through(sound, rateHz, pieceLength)
      expect(pieces.length).toBe(whole.length)
      expect(peak(pieces.map((x, n) => x - whole[n]!))).toBeLessThan(1e-5)
    }
  })
})

test("what lies above the new band is taken out, not folded back", () => {
  for (const hz of [9_000, 11_000, 15_900, 20_000])
    expect(peak(middle(through(sine(hz, 48_000, 0.5), 48_000)))).toBeLessThan(0.001)
})

test("sound that has the right rate already is passed on untouched", () => {
  const sound = sine(440, toHz, 0.1)
  expect(createResampler(toHz, toHz).push(sound)).toBe(sound)
})
