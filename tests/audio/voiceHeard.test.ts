/**
 * The built-in voice is understood by somebody who did not make it: the offline recogniser, in a free loop of words,
 * hears most of what the clips say, and more than it hears of the same synthesiser's running speech.
 * Needs the packs that `npm run ear` makes.
 */
import { readFileSync } from "node:fs"
import { beforeAll, expect, test } from "vitest"
import { speakToSamples } from "../../src/cli/flite"
import { earPackFolder, loadEngineInNode } from "../../src/cli/openEar"
import { decode, setGrammar } from "../../src/speech/decode"
import { type EarFileName, EarPack, earFileNames } from "../../src/speech/EarPack"
import type { Engine } from "../../src/speech/engine"
import { loadDecoder, type RawDecoder } from "../../src/speech/loadDecoder"
import { planClips } from "../../src/speech/planClips"
import { renderClips } from "../../src/speech/renderClips"
import { resample } from "../../src/speech/resample"
import { openVoicePack, type VoiceClips, VoicePack } from "../../src/speech/VoicePack"

const sentences = [
  "water ten square nought point nought five ohms",
  "gas sixteen square fourteen metres",
  "reading nought point six nine ohms",
  "clamp fitted label fitted",
  "oil bond four square two point five",
  "nought point one three eight ohms",
  "seven metres eight metres two metres",
  "supply size thirty five square",
]

let engine: Engine
let decoder: RawDecoder
let clips: VoiceClips
let packBytes: number
beforeAll(async () => {
  const read = (name: string) => new Uint8Array(readFileSync(`${earPackFolder}/${name}`))
  const pack = EarPack.parse(JSON.parse(readFileSync(`${earPackFolder}/pack.json`, "utf8")))
  const bytes = Object.fromEntries(earFileNames.map((name) => [name, read(name)])) as Record<EarFileName, Uint8Array>
  engine = await loadEngineInNode()
  decoder = loadDecoder(engine, { pack, bytes })
  decoder.add_words(["nought", "N AO T"])
  const words = [...new Set(sentences.join(" ").split(" "))]
  expect(setGrammar(engine, decoder, `#JSGF V1.0; grammar loop; public <loop> = (${words.join(" | ")})+;`).ok).toBe(
    true,
  )
  const note = VoicePack.parse(JSON.parse(readFileSync(`${earPackFolder}/../voice/voice.json`, "utf8")))
  packBytes = note.bytes
  clips = openVoicePack(note, new Uint8Array(readFileSync(`${earPackFolder}/../voice/${note.file}`)))
})

/** How many words of one are in the other, in order. */
const sharedWords = (one: readonly string[], other: readonly string[]): number => {
  const best = one.map(() => other.map(() => 0))
  for (const [i, a] of one.entries())
    for (const [j, b] of other.entries()) {
      const [up, left, both] = [best[i - 1]?.[j] ?? 0, best[i]![j - 1] ?? 0, best[i - 1]?.[j - 1] ?? 0]
      best[i]![j] = a === b ? both + 1 : Math.max(up, left)
    }
  return best.at(-1)?.at(-1) ?? 0
}

/** Share of all words that were heard, given how a sentence is spoken. */
const shareHeard = async (speak: (sentence: string) => Promise<Float32Array>): Promise<number> => {
  let [heard, all] = [0, 0]
  for (const sentence of sentences) {
    const sound = await speak(sentence)
    const padded = new Float32Array(sound.length + 9600)
    padded.set(sound, 4800)
    const words = sentence.split(" ")
    heard += sharedWords(words, (decode(engine, decoder, padded)?.text ?? "").split(" "))
    all += words.length
  }
  return heard / all
}

test("nine of ten words of the built-in voice are heard, and no fewer than of running synthetic speech", async () => {
  const built = await shareHeard(async (sentence) => {
    const plan = planClips(sentence, clips)
    expect(plan.spelled).toEqual([])
    return resample(renderClips(plan.pieces, clips), clips.rateHz, 16_000)
  })
  const running = await shareHeard(async (sentence) => (await speakToSamples(sentence, "slt")).samples)
  expect(built).toBeGreaterThan(0.9)
  expect(built).toBeGreaterThanOrEqual(running)
})

test("it speaks at the pace of a person: two to five words a second", () => {
  for (const sentence of sentences) {
    const samples = renderClips(planClips(sentence, clips).pieces, clips)
    const wordsPerSecond = sentence.split(" ").length / (samples.length / clips.rateHz)
    expect(wordsPerSecond).toBeGreaterThan(1.5)
    expect(wordsPerSecond).toBeLessThan(5)
  }
})

test("the voice stays under two megabytes, as it may be fetched on a phone's connection", () => {
  expect(packBytes).toBeLessThan(2_000_000)
})
