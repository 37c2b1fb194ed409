/** Recordings made from scripts: exact cues, the same bytes every time, and files that others can read. */
import { readFileSync } from "node:fs"
import { parseText } from "media-captions"
import { beforeAll, describe, expect, test } from "vitest"
import { makeNoise, noiseKinds } from "../../src/cli/makeNoise"
import { makeRecording, type Recording, type RecordingScript, readScript } from "../../src/cli/makeRecording"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import { levelOf } from "../../src/cli/trimSpeech"
import { readWav } from "../../src/speech/readWav"

const text = readFileSync("tests/speech/short.script.yaml", "utf8")
const spellings = readVoiceWords(readFileSync("grammars/en-GB/voiceWords.txt", "utf8"))
const script = (): RecordingScript => {
  const read = readScript(text)
  if (!read.ok) throw new Error(read.because)
  return read.value
}

let recording: Recording
beforeAll(async () => {
  recording = await makeRecording(script(), spellings)
})

const between = (samples: Float32Array, start: number, end: number) =>
  samples.subarray(Math.round(start * 16_000), Math.round(end * 16_000))

test("the file is 16 kHz, 16 bits, one channel, and holds the very samples", () => {
  const header = Buffer.from(recording.wav)
  expect([header.readUInt16LE(22), header.readUInt32LE(24), header.readUInt16LE(34)]).toEqual([1, 16_000, 16])
  const read = readWav(recording.wav)
  if (!read.ok) throw new Error(read.because)
  expect(read.value.rateHz).toBe(16_000)
  expect(read.value.samples).toHaveLength(recording.samples.length)
  const worst = read.value.samples.reduce((most, x, n) => Math.max(most, Math.abs(x - recording.samples[n]!)), 0)
  expect(worst).toBeLessThan(1 / 32_000)
})

test("cues lie exactly on the words: all sound is inside them, and each begins and ends with sound", () => {
  const { samples, cues } = recording
  expect(cues).toHaveLength(3)
  let before = 0
  for (const cue of cues) {
    expect(levelOf(between(samples, before, cue.start))).toBeLessThan(0.0015)
    expect(levelOf(between(samples, cue.start, cue.end))).toBeGreaterThan(cue.speaker ? 0.02 : 0.09)
    expect(levelOf(between(samples, cue.start, cue.start + 0.06))).toBeGreaterThan(0.001)
    expect(levelOf(between(samples, cue.end - 0.06, cue.end))).toBeGreaterThan(0.001)
    before = cue.end
  }
  expect(levelOf(between(samples, before, samples.length / 16_000))).toBeLessThan(0.0015)
})

test("pauses are as long as the script says", () => {
  const [first, second] = recording.cues
  expect(first!.start).toBeGreaterThanOrEqual(0.3)
  expect(first!.start).toBeLessThan(0.36)
  expect(second!.start - first!.end).toBeGreaterThanOrEqual(0.6)
  expect(second!.start - first!.end).toBeLessThan(0.67)
})

test("the transcript is WebVTT that a caption reader takes, to the millisecond", async () => {
  const { cues, errors } = await parseText(recording.vtt, { type: "vtt", strict: true, errors: true })
  expect(errors).toEqual([])
  expect(cues.map((cue) => cue.text.replace(/<[^>]*>/g, ""))).toEqual(script().lines.map((line) => line.text))
  expect(cues.map((cue) => cue.text.startsWith("<v chatter>"))).toEqual([false, true, false])
  for (const [n, cue] of cues.entries()) {
    expect(Math.abs(cue.startTime - recording.cues[n]!.start)).toBeLessThan(0.0006)
    expect(Math.abs(cue.endTime - recording.cues[n]!.end)).toBeLessThan(0.0006)
  }
})

test("letters are said as letters, and trade words as the list spells them", async () => {
  const say = async (text: string, list = spellings) => {
    const [cue] = (await makeRecording({ ...script(), lines: [{ ...script().lines[0]!, text }] }, list)).cues
    return cue!.end - cue!.start
  }
  expect(await say("p m e")).toBe(await say("p m e", []))
  expect(await say("four metres")).toBe(await say("four meters", []))
  expect(await say("four metres")).not.toBe(await say("four metres", []))
})

test("the same script gives the same bytes; noise changes with its seed and lies where the script says", async () => {
  const noisy = (seed: number) => makeRecording({ ...script(), noise: { kind: "white", snrDb: 12, seed } }, spellings)
  const [one, again, other] = [await noisy(1), await noisy(1), await noisy(2)]
  expect(Buffer.from(again.wav).equals(Buffer.from(one.wav))).toBe(true)
  expect(Buffer.from(other.wav).equals(Buffer.from(one.wav))).toBe(false)
  expect([one.vtt, other.vtt]).toEqual([recording.vtt, recording.vtt])
  const noise = one.samples.map((sample, n) => sample - recording.samples[n]!)
  const words = between(recording.samples, recording.cues[0]!.start, recording.cues[0]!.end)
  expect(20 * Math.log10(levelOf(words) / levelOf(noise))).toBeCloseTo(12, 0)
})

describe("noise", () => {
  const order = { count: 32_768, rateHz: 16_000, seed: 7 }

  test.each(noiseKinds)("%s has a loudness of one and no offset", (kind) => {
    const samples = makeNoise({ ...order, kind })
    expect(levelOf(samples)).toBeCloseTo(1, 5)
    expect(Math.abs(samples.reduce((sum, x) => sum + x, 0) / samples.length)).toBeLessThan(0.15)
  })

  test("pink falls by about 3 dB an octave, white does not", () => {
    const octave = (samples: Float32Array, hz: number) => {
      // Power near one pitch, averaged over many, by Goertzel's sum.
      const near = Array.from({ length: 40 }, (_, n) => hz * (0.9 + 0.005 * n))
      const powers = near.map((pitch) => {
        const turn = 2 * Math.cos((2 * Math.PI * pitch) / order.rateHz)
        let [one, two] = [0, 0]
        for (const sample of samples) [one, two] = [sample + turn * one - two, one]
        return one * one + two * two - turn * one * two
      })
      return 10 * Math.log10(powers.reduce((sum, power) => sum + power, 0) / powers.length)
    }
    const slope = (kind: "pink" | "white") => {
      const samples = makeNoise({ ...order, kind })
      return (octave(samples, 4000) - octave(samples, 250)) / 4
    }
    expect(slope("pink")).toBeGreaterThan(-4)
    expect(slope("pink")).toBeLessThan(-2)
    expect(Math.abs(slope("white"))).toBeLessThan(1)
  })
})

test.each([
  ["lines: []", /lines/],
  ["lines:\n  - { text: water, voice: nobody }", /lines\.0\.voice/],
  ["lines:\n  - { text: water, pauze: 1 }", /pauze/],
  ["lines: [", /not YAML/],
  ["", /script/],
])("a script with a mistake is refused in one line: %j", (broken, because) => {
  const read = readScript(broken)
  expect(read).toEqual({ ok: false, because: expect.stringMatching(because) })
  if (!read.ok) expect(read.because).not.toContain("\n")
})
