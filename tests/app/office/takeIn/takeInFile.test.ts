/** Files of every kind into a store: job files, transcripts, zip files of them, and things that are neither. */
import { readFileSync } from "node:fs"
import { strToU8, zipSync } from "fflate"
import { beforeEach, expect, test } from "vitest"
import type { TakenFile } from "../../../../src/app/office/takeIn/TakenFile"
import { type TakeInTools, takeInFile } from "../../../../src/app/office/takeIn/takeInFile"
import { refuse } from "../../../../src/facts/Outcome"
import { writeJobFile } from "../../../../src/record/jobFile"
import { createMemoryStore } from "../../../../src/record/memoryStore"
import { bakeryRecord, bakeryWarnings } from "../../../bakery"
import { realTools } from "../../../realTools"
import { opened, stampLines, waterSize } from "../../../record/someLines"
import { recordOf, saidIn } from "../../../recordOf"

let desk: TakeInTools
beforeEach(() => {
  desk = {
    store: createMemoryStore(),
    tools: realTools(),
    now: () => "2026-03-04T09:00:00+00:00",
    pack: "uk-bs7671",
    openEar: async () => refuse("The offline ear is not there."),
    told: () => {},
    clips: null,
  }
})

const changedMs = Date.UTC(2026, 2, 2, 12)
const take = async (file: string, content: string | Uint8Array): Promise<TakenFile> => {
  const bytes = typeof content === "string" ? strToU8(content) : content
  return (await takeInFile(desk, { file, bytes, changedMs }))[0]!
}
const bakery = readFileSync("samples/bakery.vtt", "utf8")
const job = writeJobFile(stampLines([opened, waterSize(10)]))

/** As the script says, but nobody heard the loop, so nobody has said yes to anything. */
const unanswered = bakeryRecord.map((line) => line.replace(/, \w+$/, ", waiting"))

test("a transcript gives the record and the warnings that its script says, none accepted, under an id of its own", async () => {
  const taken = await take("The bakery.vtt", bakery)
  expect(taken).toMatchObject({ kind: "transcript", known: 0, faults: [] })
  expect(taken.words).toMatch(
    /^A job of its own, with \d+ values\. Nobody has said yes to them yet\. Nothing came of 2 of/,
  )
  const { lines } = await desk.store.read(taken.job!)
  expect(recordOf(lines)).toEqual([...unanswered].sort())
  const warnings = saidIn(lines).filter((words) => words.startsWith("Warning."))
  expect(warnings.map((words, index) => words.slice(0, bakeryWarnings[index]?.length))).toEqual(bakeryWarnings)
  expect(await desk.store.jobs()).toEqual([expect.objectContaining({ place: "The bakery", inHand: false })])
  expect(Date.parse(lines.at(-1)!.at)).toBeLessThanOrEqual(changedMs)
})

test("the same transcript under another name and date is here already", async () => {
  const first = await take("bakery.vtt", bakery)
  const [again] = await takeInFile(desk, { file: "copy.vtt", bytes: strToU8(bakery), changedMs: changedMs + 9e9 })
  expect(again).toMatchObject({ job: first.job, fresh: 0, known: first.fresh })
  expect(await desk.store.jobs()).toHaveLength(1)
})

test.each([
  ["subtitles.srt", "1\n00:00:01,000 --> 00:00:03,000\nwater ten square eight metres\n"],
  ["plain.txt", "PME\nwater ten square eight metres\n"],
  ["lines.jsonl", '{"text":"water ten square eight metres","start":1,"end":3}\n'],
  ["no ending that says so", "WEBVTT\n\n00:01.000 --> 00:03.000\nwater ten square eight metres\n"],
])("%s is taken in as a job", async (file, content) => {
  const taken = await take(file, content)
  const { lines } = await desk.store.read(taken.job!)
  expect(recordOf(lines)).toEqual(expect.arrayContaining(["water conductor_csa 10 mm², waiting"]))
})

test("a job file is known by what is in it, whatever it is called", async () => {
  expect(await take("renamed.txt", job)).toMatchObject({
    kind: "job file",
    job: "bakery",
    fresh: 2,
    words: "Taken in.",
  })
  expect(await take("again.jsonl", job)).toMatchObject({
    fresh: 0,
    known: 2,
    words: "Here already. Nothing was added.",
  })
})

test("of a job file with a damaged byte the other lines are saved, and the fault is told", async () => {
  const bytes = strToU8(job)
  bytes[job.indexOf("conductor_csa")] = 0xff
  const taken = await take("damaged.jsonl", bytes)
  expect(taken).toMatchObject({ kind: "job file", job: "bakery", fresh: 1 })
  expect(taken.faults.join(" ")).toContain("could not be read")
  expect(taken.words).toBe("What could be read was saved. Taken in.")
})

test.each([
  ["an empty file", "empty.vtt", "", /empty/],
  ["a picture", "plan.png", "\u0089PNG", /no job file, transcript or recording/],
  ["a transcript without a line", "nothing.vtt", "WEBVTT\n", /No spoken line/],
  ["bytes called a transcript", "noise.txt", new Uint8Array([0x80, 0x9c, 0xfe, 0x41]), /no job file/],
  ["no WAV file", "noise.wav", "RIFF", /could not be heard/],
  ["a broken zip file", "jobs.zip", "PK-nothing", /could not be opened/],
])("%s is refused in plain words, and nothing is stored", async (_, file, content, because) => {
  const taken = await take(file, content)
  expect(taken.job).toBeNull()
  expect(taken.words).toMatch(because)
  expect(await desk.store.jobs()).toEqual([])
})

test("a zip file is as many files as it holds", async () => {
  const bytes = zipSync({ "a/job.jsonl": strToU8(job), "b.vtt": strToU8(bakery), "c.png": strToU8("x") })
  const taken = await takeInFile(desk, { file: "day.zip", bytes, changedMs })
  expect(taken.map((one) => [one.file, one.job !== null])).toEqual([
    ["day.zip/a/job.jsonl", true],
    ["day.zip/b.vtt", true],
    ["day.zip/c.png", false],
  ])
})
