/** Job files: whole, cut, changed, and things that are no job files at all. */
import { createHash } from "node:crypto"
import fc from "fast-check"
import { expect, test } from "vitest"
import { mostBytes, readJobFile, writeJobFile } from "../../src/record/jobFile"
import { opened, stampLines, waterReading, waterSize } from "./someLines"

const lines = stampLines([opened, waterSize(4), waterSize(10), waterReading(0.05), waterReading(null)])
const text = writeJobFile(lines)

test("what was written is read back line for line, without a fault", () => {
  expect(readJobFile(text)).toEqual({ ok: true, value: { job: "bakery", lines, faults: [], struck: 0 } })
})

test("the chain is SHA-256 as Node's own library computes it", () => {
  const rows = text.split("\n").map((row) => (row ? JSON.parse(row) : null))
  const hash = (words: string) => createHash("sha256").update(words).digest("hex")
  const first = hash(hash(JSON.stringify(rows[0])) + JSON.stringify(rows[1].line))
  expect(rows[1].hash).toBe(first)
  expect(rows[2].hash).toBe(hash(first + JSON.stringify(rows[2].line)))
})

test("a file cut in half says so and gives what stands before the cut", () => {
  const outcome = readJobFile(text.slice(0, Math.floor(text.length / 2)))
  if (!outcome.ok) throw new Error(outcome.because)
  expect(outcome.value.lines).toEqual(lines.slice(0, outcome.value.lines.length))
  expect(outcome.value.lines.length).toBeGreaterThan(0)
  expect(outcome.value.faults).toContain("The file is cut: its end is missing.")
})

test("every single changed character is noticed", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: text.length - 1 }),
      fc.constantFrom("0", "7", "x", " ", "é"),
      (at, letter) => {
        fc.pre(text[at] !== letter && text[at] !== "\n")
        const outcome = readJobFile(text.slice(0, at) + letter + text.slice(at + 1))
        const isWhole = outcome.ok && outcome.value.faults.length === 0
        if (isWhole) expect(outcome.value.lines).toEqual(lines)
        else expect(isWhole).toBe(false)
      },
    ),
    { numRuns: 400 },
  )
})

test("a line taken out is noticed", () => {
  const rows = text.split("\n")
  const outcome = readJobFile([...rows.slice(0, 2), ...rows.slice(3)].join("\n"))
  expect(outcome.ok && outcome.value.faults.length).toBeGreaterThan(0)
})

test.each([
  ["an empty file", "", "The file is empty."],
  ["another format", "a,b,c\n1,2,3\n", "This is not a Bothhands job file."],
  ["JSON of another kind", '{"format":"something"}', "This is not a Bothhands job file."],
  ["a huge file", "x".repeat(mostBytes + 1), "The file is too large to be a job file (over 64 MB)."],
])("%s is refused in one plain line", (_, content, because) => {
  expect(readJobFile(content)).toEqual({ ok: false, because })
})
