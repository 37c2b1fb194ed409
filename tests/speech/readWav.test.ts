/** Sound files as they come: made with the `wavefile` library in every common coding, and damaged by hand. */

import { describe, expect, test } from "vitest"
import wavefile from "wavefile"
import { readWav } from "../../src/speech/readWav"

const rateHz = 16_000
const tone = Float32Array.from({ length: rateHz / 4 }, (_, n) => 0.5 * Math.sin((2 * Math.PI * 400 * n) / rateHz))
const wav = (depth: string, channels = 1, rate = rateHz) => {
  const file = new wavefile.WaveFile()
  const scaled = Array.from(tone, (x) => Math.round(x * 32_767))
  file.fromScratch(channels, rate, "16", channels === 1 ? scaled : [scaled, scaled.map((x) => -x / 2)])
  if (depth === "8a") file.toALaw()
  else if (depth === "8m") file.toMuLaw()
  else if (depth !== "16") file.toBitDepth(depth)
  return file.toBuffer()
}
const furthest = (samples: Float32Array, scale = 1) =>
  samples.reduce((most, x, n) => Math.max(most, Math.abs(x - tone[n]! * scale)), 0)

test.each([
  ["8", 0.01],
  ["16", 1e-4],
  ["24", 1e-4],
  ["32", 1e-4],
  ["32f", 1e-4],
  ["64", 1e-4],
  ["8a", 0.02],
  ["8m", 0.02],
])("a file of %s bits sounds like itself", (depth, allowed) => {
  const read = readWav(wav(depth))
  if (!read.ok) throw new Error(read.because)
  expect(read.value.rateHz).toBe(rateHz)
  expect(read.value.samples.length).toBe(tone.length)
  expect(furthest(read.value.samples)).toBeLessThan(allowed)
})

test("two channels become their mean, and the rate is the file's own", () => {
  const read = readWav(wav("16", 2, 48_000))
  if (!read.ok) throw new Error(read.because)
  expect(read.value.rateHz).toBe(48_000)
  expect(furthest(read.value.samples, 0.25)).toBeLessThan(1e-3)
})

test("a recording that was cut off gives what is there", () => {
  const read = readWav(wav("16").slice(0, 44 + 2_000))
  if (!read.ok) throw new Error(read.because)
  expect(read.value.samples.length).toBe(1_000)
})

describe("what is no sound is refused in words", () => {
  test.each([
    ["nothing", new Uint8Array(0), "the file is empty"],
    ["text", new TextEncoder().encode("water bond sixteen square, and some more words"), "the file is not a WAV file"],
    ["half a header", wav("16").slice(0, 30), "the file ends within its header"],
    ["a header without sound", wav("16").slice(0, 36), "the file ends within its header"],
    ["a header and nothing after it", wav("16").slice(0, 44), "the file holds no sound"],
    ["a rate of nought", wav("16").fill(0, 24, 28), "its rate of 0 Hz is no rate of speech"],
  ])("%s", (_, bytes, because) => {
    expect(readWav(bytes)).toEqual({ ok: false, because })
  })

  test("damage anywhere in the header is refused or read, never thrown", () => {
    const short = wav("16").slice(0, 44 + 400)
    for (let at = 0; at < 44; at++)
      for (const value of [0, 1, 127, 255]) expect(readWav(short.slice().fill(value, at, at + 1))).toHaveProperty("ok")
  })
})
