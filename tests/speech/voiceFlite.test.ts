/** The synthesiser that makes voice pack, samples and test sounds: four voices, 16 kHz, the same every time. */
import { expect, test } from "vitest"
import { fliteVoices, speakToSamples } from "../../src/cli/flite"

const loudness = (samples: Float32Array) => Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length)

test.each(fliteVoices)("%s speaks at 16 kHz, at a speaking pace and well above silence", async (voice) => {
  const { samples, rate } = await speakToSamples("water bond ten millimetre", voice)
  expect(rate).toBe(16_000)
  // Seven syllables; people speak four to six a second, and a synthesiser leaves some silence at both ends.
  expect(samples.length / rate).toBeGreaterThan(1)
  expect(samples.length / rate).toBeLessThan(2.5)
  expect(loudness(samples)).toBeGreaterThan(0.02)
  expect(samples.every((sample) => Math.abs(sample) <= 1)).toBe(true)
})

test("the same words give the same samples, and a stretch makes them longer", async () => {
  const [one, again, slow] = await Promise.all([
    speakToSamples("nought point four", "slt"),
    speakToSamples("nought point four", "slt"),
    speakToSamples("nought point four", "slt", { stretch: 1.5 }),
  ])
  expect(Buffer.from(again.samples.buffer).equals(Buffer.from(one.samples.buffer))).toBe(true)
  expect(slow.samples.length / one.samples.length).toBeCloseTo(1.5, 1)
})

test("words that look like options or markup are only spoken", async () => {
  const { samples } = await speakToSamples("-voice <kal> & | ; bond", "slt")
  expect(samples.length).toBeGreaterThan(16_000)
})

test("a text without sound is an error, not silence", async () => {
  await expect(speakToSamples("", "slt")).rejects.toThrow(/no sound/)
})
