/** `hear` with a made-up recogniser: what is printed, in which order, and what happens to bad files. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { parseText } from "media-captions"
import { afterAll, beforeAll, expect, test } from "vitest"
import wavefile from "wavefile"
import { type HearOrder, hearFiles } from "../../src/cli/hearFiles"
import { done, refuse } from "../../src/facts/Outcome"
import type { Recogniser } from "../../src/speech/recogniser"
import { join as joinSounds, rateHz, silence, word } from "../speech/madeUpSound"

let folder: string
const path = (name: string) => join(folder, name)
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "hear-"))
  const sound = joinSounds(silence(1), word(0.6), silence(2), word(0.6), silence(1))
  const file = new wavefile.WaveFile()
  file.fromScratch(
    1,
    rateHz,
    "16",
    Array.from(sound, (x) => Math.round(x * 32_767)),
  )
  writeFileSync(path("two.wav"), file.toBuffer())
  writeFileSync(path("empty.wav"), "")
  writeFileSync(path("notes.wav"), "these are only notes, and no sound at all; forty-four bytes of them")
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const recogniser = (): Recogniser => {
  let heard = 0
  return {
    rateHz,
    take: () => done(undefined),
    fitTo: () => {},
    startAnew: () => {},
    weigh: () => null,
    hear: () => {
      heard += 1
      const text = heard % 2 ? "gas bond <ten> & more" : "no"
      return { text, alternatives: [], words: [{ text, start: 0.3, end: 0.7, score: 0.9 }], margin: 1.2 }
    },
  }
}
const run = async (
  order: Partial<HearOrder>,
  ear = done(recogniser()) as ReturnType<typeof done<Recogniser>> | ReturnType<typeof refuse>,
) => {
  const printed: string[] = []
  const complaints: string[] = []
  const status = await hearFiles(
    { files: [path("two.wav")], context: {}, to: "jsonl", ...order },
    {
      openEar: async () => ear,
      earGrammar: () => ({ id: "g", jsgf: "", pronunciations: [] }),
      interpret: () => ({ facts: [{ kind: "confirm", value: true }], ask: null, command: null }),
      print: (line) => printed.push(line),
      complain: (line) => complaints.push(line),
    },
  )
  return { status, printed, complaints }
}

test("one JSON line an utterance, in order, with its file and what it means", async () => {
  const { status, printed } = await run({ files: [path("two.wav"), path("two.wav")] })
  expect(status).toBe(0)
  const lines = printed.map((line) => JSON.parse(line))
  expect(lines).toHaveLength(4)
  expect(Object.keys(lines[0])).toEqual(["file", "start", "end", "text", "words", "margin", "facts", "ask"])
  expect(lines[0]).toMatchObject({ file: path("two.wav"), margin: 1.2, facts: [{ kind: "confirm" }], ask: null })
  expect(lines[1].start).toBeGreaterThan(lines[0].end)
})

test("as WebVTT it is what another reader of captions understands", async () => {
  const { printed } = await run({ to: "vtt" })
  const { cues, errors } = await parseText(printed.join("\n"), { type: "vtt", strict: true })
  expect(errors).toEqual([])
  expect(cues.map((cue) => cue.text)).toEqual(["gas bond &lt;ten&gt; &amp; more", "no"])
  expect(cues[0]!.endTime).toBeGreaterThan(cues[0]!.startTime)
})

test("bad files are told in one plain line each, and the good ones are heard all the same", async () => {
  const files = ["empty.wav", "two.wav", "notes.wav", "missing.wav"].map(path)
  const { status, printed, complaints } = await run({ files })
  expect(status).toBe(2)
  expect(printed).toHaveLength(2)
  expect(complaints).toEqual([
    `${path("empty.wav")}: the file is empty`,
    `${path("notes.wav")}: the file is not a WAV file`,
    `${path("missing.wav")}: there is no such file`,
  ])
})

test("without an ear nothing is heard, and the reason is told", async () => {
  const { status, printed, complaints } = await run({}, refuse("The offline ear is not there. Run: npm run ear"))
  expect([status, printed, complaints]).toEqual([2, [], ["The offline ear is not there. Run: npm run ear"]])
})
