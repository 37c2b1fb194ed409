/** The four sounds: short, within full scale, without clicks, and told apart by rhythm as well as by pitch. */
import { expect, test } from "vitest"
import type { Sound } from "../../src/speech/Speaker"
import { renderSound, soundMs, sounds } from "../../src/speech/sounds"

const names = Object.keys(sounds) as Sound[]
const rateHz = 16_000

/** Power at one pitch, by Goertzel's sum. */
const powerAt = (samples: Float32Array, hz: number) => {
  const turn = 2 * Math.cos((2 * Math.PI * hz) / rateHz)
  let [one, two] = [0, 0]
  for (const sample of samples) [one, two] = [sample + turn * one - two, one]
  return one * one + two * two - turn * one * two
}

/** When it is loud, in steps of 10 ms: the lengths of its beats and of the gaps between them. */
const rhythmOf = (samples: Float32Array) => {
  const step = rateHz / 100
  const loud = Array.from({ length: Math.ceil(samples.length / step) }, (_, n) =>
    samples.subarray(n * step, (n + 1) * step).some((sample) => Math.abs(sample) > 0.05),
  )
  return loud
    .map((on) => (on ? "x" : " "))
    .join("")
    .trim()
    .split(/ +/)
    .map((beat) => beat.length * 10)
}

test.each(names)("%s is short, has no edge that clicks and stays below full scale", (name) => {
  const samples = renderSound(name, rateHz)
  const mostMs = name === "warning" ? 600 : 350
  expect(soundMs(name)).toBeLessThanOrEqual(mostMs)
  expect(samples.length / rateHz).toBeCloseTo(soundMs(name) / 1000, 3)
  const peak = Math.max(...samples.map(Math.abs))
  expect(peak).toBeGreaterThan(0.25)
  expect(peak).toBeLessThanOrEqual(0.801)
  expect(Math.abs(samples[0]!)).toBeLessThan(0.01)
  expect(Math.abs(samples.at(-1)!)).toBeLessThan(0.05)
})

test("rhythms differ: one short, two quick, two long, three loud", () => {
  const rhythms = Object.fromEntries(names.map((name) => [name, rhythmOf(renderSound(name, rateHz))]))
  expect(rhythms.listening).toHaveLength(1)
  expect(rhythms.gotIt).toHaveLength(2)
  expect(rhythms.sayAgain).toHaveLength(2)
  expect(rhythms.warning).toHaveLength(3)
  expect(Math.max(...rhythms.gotIt!)).toBeLessThan(Math.min(...rhythms.sayAgain!) - 20)
})

test("no sound has its strongest pitch where another one has", () => {
  const pitches = Array.from({ length: 100 }, (_, n) => 300 + 20 * n)
  const strongest = names.map((name) => {
    const samples = renderSound(name, rateHz)
    return pitches.reduce((best, hz) => (powerAt(samples, hz) > powerAt(samples, best) ? hz : best))
  })
  for (const [at, hz] of strongest.entries())
    for (const other of strongest.slice(at + 1)) expect(Math.abs(Math.log2(hz / other))).toBeGreaterThan(0.2)
})

test("the warning is the loudest", () => {
  const level = (name: Sound) => {
    const samples = renderSound(name, rateHz)
    return samples.reduce((sum, sample) => sum + sample * sample, 0)
  }
  for (const name of names.filter((one) => one !== "warning")) expect(level("warning")).toBeGreaterThan(2 * level(name))
})
