/** Transcripts that are damaged in part: the rest is kept, and what is left out is said. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, test } from "vitest"
import { readText } from "../../src/cli/readInput"
import { readTranscript, type TranscriptKind } from "../../src/speech/readTranscript"

const folder = mkdtempSync(join(tmpdir(), "bothhands-transcript-"))
afterAll(() => rmSync(folder, { recursive: true }))

const read = async (text: string, kind: TranscriptKind) => {
  const faults: string[] = []
  const heards = await readTranscript(text, kind, (fault) => void faults.push(fault))
  return { texts: heards.ok ? heards.value.map((heard) => heard.text) : heards.because, heards, faults }
}

test("a line of JSON that cannot be read is left out and said, and the others are kept", async () => {
  const { texts, faults } = await read('{"text":"gas ten square"}\n{"text":\n{"text":"eight metres"}', "jsonl")
  expect(texts).toEqual(["gas ten square", "eight metres"])
  expect(faults).toEqual(['Line 2 is not a JSON object with a "text".'])
})

test("a cue with a time that cannot be read is said", async () => {
  const { texts, faults } = await read(
    "WEBVTT\n\n00:01.000 --> 00:02.000\ngas ten square\n\n00:xx --> 00:04.000\neight metres\n",
    "vtt",
  )
  expect(texts).toContain("gas ten square")
  expect(faults.join(" ")).toMatch(/Line 6/)
})

test("a time that no visit has is that of the utterance before", async () => {
  const { heards, faults } = await read('{"text":"gas","start":1,"end":2}\n{"text":"oil","start":1e999}', "jsonl")
  expect(heards.ok && heards.value[1]).toMatchObject({ text: "oil", start: 2, end: 2 })
  expect(faults).toHaveLength(1)
})

test("an utterance with bytes that are no text is left out, never read in part", async () => {
  const path = join(folder, "bad.txt")
  const bytes = new TextEncoder().encode(`${"nought point nought two\n".repeat(9)}gas sixteen square`)
  bytes[bytes.length - 10] = 0xff
  writeFileSync(path, bytes)
  const text = await readText(path)
  if (!text.ok) throw new Error(text.because)
  const { texts, faults } = await read(text.value, "txt")
  expect(texts).toEqual(Array(9).fill("nought point nought two"))
  expect(faults).toEqual(["Utterance 10 holds bytes that are no text and was left out."])
})

test("text in UTF-16 is read, and bytes that are another thing are refused", async () => {
  const path = join(folder, "wide.txt")
  writeFileSync(path, Buffer.from("\uFEFFgas ten square", "utf16le"))
  expect(await readText(path)).toEqual({ ok: true, value: "gas ten square" })
  writeFileSync(
    path,
    Uint8Array.from({ length: 400 }, (_, at) => (at * 151) % 256),
  )
  expect(await readText(path)).toMatchObject({ ok: false })
})

test("a row of opened tags is read at once", async () => {
  const { texts } = await read(`WEBVTT\n\n00:01.000 --> 00:02.000\n${"<v ".repeat(6000)}\n`, "vtt")
  expect(texts).toHaveLength(1)
})
