/** A small pack made for real: what comes out of it is what was spoken, and making it again costs nothing. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, beforeAll, expect, test } from "vitest"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import { levelOf } from "../../src/cli/trimSpeech"
import { makeVoicePack, speakClip } from "../../src/cli/voicePack"
import { planClips } from "../../src/speech/planClips"
import { renderClips } from "../../src/speech/renderClips"
import { openVoicePack, VoicePack } from "../../src/speech/VoicePack"

const list = "# a comment\nwater\nnought = naught\nSquare\nletter:z = zed\nIf you smell gas, stop\n² = Square\n"
const words = readVoiceWords(list)
const out = mkdtempSync(join(tmpdir(), "voice-"))
afterAll(() => rmSync(out, { recursive: true }))

const readNote = () => VoicePack.parse(JSON.parse(readFileSync(join(out, "voice.json"), "utf8")))
const readClips = () => openVoicePack(readNote(), new Uint8Array(readFileSync(join(out, readNote().file))))

beforeAll(async () => {
  expect(await makeVoicePack({ words, out })).toMatchObject({ made: true, words: 6 })
})

test("the list is read into names and spellings", () => {
  expect(words.slice(0, 3)).toEqual([
    { name: "water", spoken: "water" },
    { name: "nought", spoken: "naught" },
    { name: "square", spoken: "Square" },
  ])
  expect(words[4]!.name).toBe("if you smell gas , stop")
  expect(() => readVoiceWords("water\nWater\n")).toThrow(/twice/)
})

test.each(words)("$name comes back 18 dB above what packing lost, at one loudness", async (word) => {
  const original = await speakClip(word)
  const clip = readClips().read(word.name)
  expect(clip).toHaveLength(original.length)
  const lost = levelOf(original.map((sample, n) => sample - clip[n]!))
  expect(20 * Math.log10(levelOf(original) / lost)).toBeGreaterThan(18)
  expect(levelOf(clip)).toBeGreaterThan(0.1)
  expect(levelOf(clip)).toBeLessThan(0.16)
  expect(clip.every((sample) => Math.abs(sample) < 0.95)).toBe(true)
  // Silence is trimmed: speech is in the first and the last tenth of a second.
  const edge = Math.round(readNote().rateHz / 10)
  expect(levelOf(clip.subarray(0, edge))).toBeGreaterThan(0.005)
  expect(levelOf(clip.subarray(-edge))).toBeGreaterThan(0.001)
})

test("words that sound the same share a clip", () => {
  expect(readNote().clips["²"]!.slice(0, 3)).toEqual(readNote().clips.square!.slice(0, 3))
})

test("a sentence is as long as its clips and gaps", () => {
  const clips = readClips()
  const { pieces } = planClips("Water. Nought.", clips)
  const spoken = clips.read("water").length + clips.read("nought").length
  expect(renderClips(pieces, clips)).toHaveLength(spoken + 0.42 * clips.rateHz)
  expect(renderClips(pieces, clips, 2)).toHaveLength(spoken + 0.21 * clips.rateHz)
})

test("is not made again, only what is new is spoken, and a damaged pack is made anew", async () => {
  expect(await makeVoicePack({ words, out })).toMatchObject({ made: false })
  const more = [...words, { name: "gas", spoken: "gas" }]
  const before = readClips().read("water")
  expect(await makeVoicePack({ words: more, out })).toMatchObject({ made: true, words: 7 })
  expect(readClips().read("water")).toEqual(before)
  expect(readClips().read("gas").length).toBeGreaterThan(2000)
  expect(readdirSync(out).filter((name) => name.endsWith(".bin"))).toHaveLength(1)

  truncateSync(join(out, readNote().file), 1000)
  expect(() => readClips()).toThrow(/instead of/)
  expect(await makeVoicePack({ words, out })).toMatchObject({ made: true, words: 6 })
  expect(readClips().read("water")).toEqual(before)
  writeFileSync(join(out, "voice.json"), "{}")
  expect(await makeVoicePack({ words, out })).toMatchObject({ made: true })
})
