/** The loop over transcripts on the command line: what comes out, the exit status, and bad input of every kind. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, test } from "vitest"
import { checkCommand } from "../../src/cli/checkCommand"
import { logCommand } from "../../src/cli/logCommand"
import { captureConsole } from "./captureConsole"

const folder = mkdtempSync(join(tmpdir(), "bothhands-log-"))
afterAll(() => rmSync(folder, { recursive: true }))

const options = { place: "The bakery", start: "2026-03-02T09:00:00Z", pack: "uk-bs7671" }
const fileOf = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const log = async (path: string, more: object = {}) => {
  const io = captureConsole()
  const status = await logCommand(path, { ...options, ...more }, io)
  return { status, ...io }
}

const tooSmall = ["pme", "supply neutral twenty five square", "water four square"]
const putRight = [...tooSmall, "no make that ten square", "what's left"]

test("a breach that stands at the end gives status 1, and names clause and edition", async () => {
  const { status, printed } = await log(fileOf("small.txt", tooSmall.join("\n")))
  expect(status).toBe(1)
  const stop = printed.find((line) => line.includes("STOP"))
  expect(stop).toContain("544.1.1")
})

test("put right, it gives status 0", async () => {
  expect((await log(fileOf("right.txt", putRight.join("\n")))).status).toBe(0)
})

test("the same words as text, WebVTT, SubRip and JSON lines give the same record", async () => {
  const time = (n: number, sign: string) => `00:00:${String(n * 5).padStart(2, "0")}${sign}000`
  const cues = (sign: string) =>
    putRight.map((words, n) => `${n + 1}\n${time(n, sign)} --> ${time(n + 1, sign)}\n${words}`).join("\n\n")
  const files = [
    fileOf("same.txt", putRight.join("\n")),
    fileOf("same.vtt", `WEBVTT\n\n${cues(".")}\n`),
    fileOf("same.srt", `${cues(",")}\n`),
    fileOf("same.jsonl", putRight.map((text, n) => JSON.stringify({ text, start: n * 5, end: n * 5 + 5 })).join("\n")),
  ]
  const runs = await Promise.all(files.map((file) => log(file, { json: true })))
  const entries = runs.map(({ printed }) =>
    printed.map((line) => JSON.parse(line)).flatMap((one) => (one.entry ? [[one.entry, one.accepted]] : [])),
  )
  expect(entries[0]!.length).toBeGreaterThan(3)
  for (const other of entries.slice(1)) expect(other).toEqual(entries[0])
})

test("times of the transcript stand in the job file, and checking that file finds the same", async () => {
  const vtt = fileOf("timed.vtt", "WEBVTT\n\n00:01:00.000 --> 00:01:02.000\nwater four square\n")
  const out = join(folder, "timed.bothhands.jsonl")
  expect((await log(vtt, { out })).status).toBe(1)
  expect(readFileSync(out, "utf8")).toContain("2026-03-02T09:01:02.000Z")
  const io = captureConsole()
  expect(await checkCommand(out, { pack: "uk-bs7671" }, io)).toBe(1)
  expect(io.printed.some((line) => line.startsWith("STOP"))).toBe(true)
})

const bad: [string, string, string | Uint8Array | null, RegExp][] = [
  ["an empty file", "empty.vtt", "", /empty/],
  ["no file", "missing.vtt", null, /no such file/],
  ["another format", "photo.png", "x", /I read vtt, srt, txt, jsonl and wav/],
  ["WebVTT without a cue", "none.vtt", "WEBVTT\n\n", /No spoken line/],
  ["a text of 10 MB", "huge.txt", "water ten square\n".repeat(620_000), /too large/],
  ["bytes that are no text", "bytes.txt", new Uint8Array([0x81, 0xfe, 0x00, 0x80]), /not text/],
  ["JSON lines with no good line", "bad.jsonl", '{"words":1}\n{"text":\n', /Line 1/],
  ["a sound file that is none", "fake.wav", "RIFFnothing", /WAV|header/],
]
test.each(bad)("%s gives one plain line and status 2", async (_, name, content, words) => {
  const path = content === null ? join(folder, name) : fileOf(name, content)
  const { status, printed, complained } = await log(path)
  expect(status).toBe(2)
  expect(printed).toEqual([])
  expect(complained).toHaveLength(1)
  expect(complained[0]).toMatch(words)
  expect(complained[0]).not.toMatch(/\n|at .*\.ts/)
})

test("of a transcript with a bad line, the others are logged, the bad one is said, and the status is 1", async () => {
  const { status, printed, complained } = await log(fileOf("part.jsonl", '{"text":"water ten square"}\n{"words":1}\n'))
  expect(status).toBe(1)
  expect(printed.join("\n")).toMatch(/water conductor_csa 10 mm²/)
  expect(complained.join("\n")).toMatch(/Line 2/)
})

test("an unknown pack and a start that is no time are refused", async () => {
  const path = fileOf("ok.txt", "water ten square")
  expect((await log(path, { pack: "moon" })).complained[0]).toMatch(/no rule pack "moon"/)
  expect((await log(path, { start: "yesterday" })).complained[0]).toMatch(/is not a time/)
})

test("a job file cut in half: the faults are said first, and what is left is still checked", async () => {
  const out = join(folder, "whole.bothhands.jsonl")
  await log(fileOf("cut.txt", tooSmall.join("\n")), { out })
  const text = readFileSync(out, "utf8")
  const io = captureConsole()
  const status = await checkCommand(fileOf("half.jsonl", text.slice(0, text.length * 0.9)), { pack: "uk-bs7671" }, io)
  expect(io.printed[0]).toMatch(/^fault/)
  expect(status).toBe(1)
})

test("a yes counts as an answer only where the app was answering", async () => {
  const said = fileOf("answered.txt", "gas bond nought point nought four ohms\nyes\n")
  const accepted = async (more: object) =>
    (await log(said, { json: true, ...more })).printed
      .map((line) => JSON.parse(line))
      .flatMap((one) => (one.entry?.kind === "resistance" ? [one.accepted] : []))
  expect(await accepted({})).toEqual([null])
  expect(await accepted({ live: true })).toEqual(["said_yes"])
})
