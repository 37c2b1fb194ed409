/** The row of a log: the sample job's values as its script says them. */
import { readFileSync } from "node:fs"
import { expect, test } from "vitest"
import { readJobFile } from "../../src/record/jobFile"
import type { Draft } from "../../src/record/LogLine"
import { project } from "../../src/record/project"
import { toSituation } from "../../src/record/toSituation"
import { warningKey } from "../../src/record/warningKey"
import { makeRow } from "../../src/search/makeRow"
import { realTools } from "../realTools"
import { entry, opened, stampLines, waterReading, waterSize } from "../record/someLines"

const nothing = () => ({ findings: [], missing: [] })

test("the sample job in a row", () => {
  const file = readJobFile(readFileSync("samples/bakery.bothhands.jsonl", "utf8"))
  if (!file.ok) throw new Error(file.because)
  const row = makeRow(file.value.lines, nothing)!
  expect(row).toMatchObject({ lines: file.value.lines.length, signedOff: false, awaiting: 0 })
  expect(row.supply).toEqual({ arrangement: "TN-C-S", neutralMm2: 25 })
  const parts = Object.fromEntries(row.parts.map(({ item, ...values }) => [item, values]))
  expect(parts).toEqual({
    earthing_conductor: { mm2: 16, lengthM: 3 },
    test_leads: { ohms: 99900, limit: ">" },
    gas: { mm2: 10, lengthM: 8, clampMm: 400, ohms: 0.02 },
    water: { mm2: 10, lengthM: 26, clampMm: 300, ohms: 0.05 },
  })
  expect(row.words.split(" ")).toEqual(expect.arrayContaining(["gas", "square", "millimetres"]))
  expect(new Set(row.words.split(" ")).size).toBe(row.words.split(" ").length)
})

test("a value that was taken back is not in the row; one that waits for a yes is, and is counted", () => {
  const lines = stampLines([
    opened,
    waterSize(4),
    { type: "withdrawn", entry: "bakery-1", because: "denied" },
    waterReading(0.05),
  ])
  expect(makeRow(lines, nothing)).toMatchObject({ parts: [{ item: "water", ohms: 0.05 }], awaiting: 1 })
  expect(makeRow(lines, nothing)?.parts[0]).not.toHaveProperty("mm2")
})

test("values that nobody answered are counted apart from those that wait for a yes", () => {
  const lines = stampLines([opened, waterSize(10), waterReading(0.05)])
  expect(makeRow(lines, nothing)).toMatchObject({ awaiting: 1, unseen: 1 })
})

test("a job whose first line is lost is still listed, and is in nobody's hand", () => {
  const row = makeRow(stampLines([waterSize(10)], "bakery", 1), nothing)
  expect(row).toMatchObject({ job: "bakery", place: expect.stringContaining("not known"), inHand: false, lines: 1 })
  expect(makeRow([], nothing)).toBeNull()
})

test("stops and warnings are counted as the rules find them, and a kept one apart", () => {
  const { check } = realTools()
  const supply: Draft[] = [
    entry({ kind: "earthing_arrangement", value: "TN-C-S" }),
    entry({ kind: "neutral_csa", value: 25, unit: "mm2" }),
  ]
  const small = stampLines([opened, ...supply, waterSize(4)])
  expect(makeRow(small, check)).toMatchObject({ stops: 1, kept: 0 })
  const stop = check(toSituation(project(small))).findings.find((one) => one.severity === "stop")!
  const warning = warningKey(stop)
  const answer: Draft[] = [
    { type: "said", words: stop.spoken, warns: [warning] },
    { type: "kept", warning, reason: "to be replaced" },
  ]
  const kept = stampLines(answer, "bakery", 4)
  expect(makeRow([...small, ...kept], check)).toMatchObject({ stops: 0, kept: 1 })
})
