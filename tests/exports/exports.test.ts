/**
 * Exports read by readers that did not write them: CSV by csv-parse, WebVTT by media-captions, JSON by ajv (2020-12) with
 * ajv-formats. The sample job value for value, then hostile texts.
 */
import { readFileSync } from "node:fs"
import Ajv2020 from "ajv/dist/2020"
import addFormats from "ajv-formats"
import { parse } from "csv-parse/sync"
import fc from "fast-check"
import { parseText } from "media-captions"
import { expect, test, vi } from "vitest"
import { guardFormula } from "../../src/exports/guardFormula"
import { jobFileLineSchema, recordSchema } from "../../src/exports/jsonSchemas"
import { csvColumns, csvRows, recordCsv } from "../../src/exports/recordCsv"
import { recordJson } from "../../src/exports/recordJson"
import { safeName } from "../../src/exports/safeName"
import { saidVtt } from "../../src/exports/saidVtt"
import { writeJobFile } from "../../src/record/jobFile"
import type { LogLine } from "../../src/record/LogLine"
import { bakeryRecord } from "../bakery"
import { bakeryText, hostileJob, jobOf } from "./bakeryJob"

vi.setConfig({ testTimeout: 60_000 })
const bakery = jobOf(bakeryText)
const readCsv = (text: string) => parse(text, { bom: true, columns: true }) as Record<string, string>[]
const ajv = addFormats.default(new Ajv2020({ strict: false }))
const isRecord = ajv.compile(recordSchema())

const hostile = fc.oneof(
  fc.constantFrom("=1+1", "+1", "-2", "@x", "\tx", "\r\n\r\n00:00:00.000 --> 00:00:09.000\nx", '";"\n,', "../../x"),
  fc.constantFrom("<script>alert(1)</script>", "a --> b", "x\n\nNOTE y", "&lt;", "\uFF1D1"),
  fc.string({ unit: "grapheme", minLength: 1, maxLength: 80 }),
)

test("csv-parse reads every value of the sample, with its unit and state", () => {
  const rows = readCsv(recordCsv(bakery))
  const figures = rows.filter((row) => ["mm²", "m", "mm", "Ω", "A"].includes(row.unit!))
  const shown = figures.map((row) => `${row.item!.replaceAll(" ", "_")} ${row.value} ${row.unit}, ${row.state}`)
  const wanted = bakeryRecord
    .filter((one) => / (mm²|m|mm|Ω|A),/.test(one))
    .map((one) => one.replace(/ (conductor_csa|neutral_csa|length|distance|resistance)/, "").replace(/_(?=\w+$)/, " "))
  expect(shown.sort()).toEqual(wanted.map((one) => one.replace("said_yes", "said yes")).sort())
  expect(rows).toHaveLength(bakeryRecord.length)
})

test("signatures, names and what was opened again stand in CSV and JSON", () => {
  const lines = bakery.lines
  const last = lines.at(-1)!
  const stamp = { v: 1, job: last.job, at: last.at, by: "office", device: "desk" } as const
  const more: LogLine[] = [
    { ...stamp, id: "s1", seq: last.seq + 1, type: "signed_off", role: "worker", name: "A. Example", undone: [] },
    { ...stamp, id: "s2", seq: last.seq + 2, type: "reopened", because: "After signing, a value was taken back." },
    { ...stamp, id: "s3", seq: last.seq + 3, type: "signed_off", role: "reviewer", undone: ["supply: polarity"] },
  ]
  const job = jobOf(writeJobFile([...lines, ...more]))
  const rows = readCsv(recordCsv(job)).filter((row) => row.what === "signature")
  expect(rows.map((row) => [row.value, row.state, row.words])).toEqual([
    ["", "opened again", "After signing, a value was taken back."],
    ["reviewer", "signed", ""],
  ])
  const json = JSON.parse(recordJson(job))
  expect(isRecord(json), ajv.errorsText(isRecord.errors)).toBe(true)
  expect(json.signatures).toMatchObject([{ role: "reviewer", name: null }])
  expect(json.reopenings).toMatchObject([{ by: "office", signatures: [{ role: "worker", name: "A. Example" }] }])
})

test("csv-parse gives hostile texts back, but for the apostrophes that keep a spreadsheet from running them", () => {
  const plain = (cell: string | number) => String(cell).replaceAll("'", "")
  fc.assert(
    fc.property(hostile, (text) => {
      const job = hostileJob(text)
      const wanted = csvRows(job).map((row) => csvColumns.map((column) => plain(row[column])))
      expect(readCsv(recordCsv(job)).map((row) => Object.values(row).map(plain))).toEqual(wanted)
    }),
    { numRuns: 20 },
  )
})

test("no cell begins as a formula, whichever separator a spreadsheet takes", () => {
  const isRun = (cell: string) => /^[\s"\u201C\u201D]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]/.test(cell)
  const glued = fc.constantFrom(
    "a;=1+1",
    'a;"=1+1',
    "a; =1+1",
    "a\n=1+1",
    "a\t@x",
    "a|+1",
    'a;""-1',
    " =1+1",
    '"=1+1',
    "a;\uFF1D1",
  )
  fc.assert(
    fc.property(fc.oneof(hostile, glued), (text) => {
      const csv = recordCsv(hostileJob(text)).slice(1)
      for (const delimiter of [",", ";", "\t", "|"]) {
        const rows = parse(csv, { delimiter, relax_quotes: true, relax_column_count: true }) as string[][]
        expect(rows.flat().filter(isRun)).toEqual([])
      }
    }),
    { numRuns: 15 },
  )
})

test("numbers and plain texts are left as they are", () => {
  expect(guardFormula("400 mm; no more")).toBe("400 mm; no more")
  expect(guardFormula("a;=1")).toBe("a;'=1")
  expect(
    csvRows(bakery).flatMap((row) => Object.values(row).filter((cell) => guardFormula(String(cell)) !== String(cell))),
  ).toEqual([])
})

test("media-captions reads hostile texts as the cues that were written, and no more", async () => {
  await fc.assert(
    fc.asyncProperty(hostile, async (text) => {
      const { lines } = hostileJob(text)
      const { cues, errors } = await parseText(saidVtt(lines), { strict: false, errors: true })
      expect(errors).toEqual([])
      expect(cues).toHaveLength(lines.filter((line) => line.type === "heard" || line.type === "said").length)
    }),
    { numRuns: 20 },
  )
})

test("what the worker said comes back from the WebVTT word for word and in its order, within the job's time", async () => {
  const { cues } = await parseText(saidVtt(bakery.lines), { strict: true, errors: true })
  const spoken = cues.filter((cue) => cue.text.startsWith("<v Worker>"))
  const { cues: all } = await parseText(readFileSync("samples/bakery.vtt", "utf8"))
  const script = all.filter((cue) => !cue.text.startsWith("<v chatter>"))
  expect(spoken.map((cue) => cue.text.slice("<v Worker>".length))).toEqual(script.map((cue) => cue.text))
  for (const [at, cue] of spoken.entries()) {
    expect(cue.startTime).toBeGreaterThanOrEqual(spoken[at - 1]?.endTime ?? 0)
    expect(cue.startTime).toBeCloseTo(script[at]!.startTime, 0)
  }
})

test("ajv accepts the exported JSON and every line of the job file, and the log in it is the file's own", () => {
  const record: { lines: never[] } = JSON.parse(recordJson(bakery))
  expect(isRecord(record), ajv.errorsText(isRecord.errors)).toBe(true)
  expect(writeJobFile(record.lines)).toBe(bakeryText)
  const isLine = ajv.compile(jobFileLineSchema())
  for (const line of bakeryText.trim().split("\n")) expect(isLine(JSON.parse(line))).toBe(true)
  const wrong = bakeryText
    .split("\n")
    .find((line) => line.includes("TN-C-S"))!
    .replace("TN-C-S", "TN-X")
  expect(isLine(JSON.parse(wrong))).toBe(false)
})

test("a name made of any text stays in its folder", () => {
  fc.assert(
    fc.property(hostile, (text) => {
      expect(safeName(text)).toMatch(/^[^./\\-][^/\\]*$/u)
    }),
  )
})
