/**
 * Plain words as conditions. Weeks begin on Monday as in ISO 8601; the days were counted in a printed calendar of 2026,
 * in which 25 November is a Wednesday. Dates in figures are day, month, year, as in Britain.
 */
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import type { Condition } from "../../src/search/Condition"
import { readQuery } from "../../src/search/readQuery"

const context = { today: { year: 2026, month: 11, day: 25 }, items: ["gas", "flour_silo_frame"] }
const conditionsOf = (text: string) => readQuery(text, context).understood.map((one) => one.condition)

const days: readonly [string, string | null, string | null][] = [
  ["last week", "2026-11-16", "2026-11-22"],
  ["this week", "2026-11-23", "2026-11-29"],
  ["last month", "2026-10-01", "2026-10-31"],
  ["in february", "2026-02-01", "2026-02-28"],
  ["february 2024", "2024-02-01", "2024-02-29"],
  ["in december", "2025-12-01", "2025-12-31"],
  ["in 2025", "2025-01-01", "2025-12-31"],
  ["last year", "2025-01-01", "2025-12-31"],
  ["today", "2026-11-25", "2026-11-25"],
  ["yesterday", "2026-11-24", "2026-11-24"],
  ["on monday", "2026-11-23", "2026-11-23"],
  ["friday", "2026-11-20", "2026-11-20"],
  ["since monday", "2026-11-23", null],
  ["2 weeks ago", "2026-11-11", "2026-11-11"],
  ["last 7 days", "2026-11-19", "2026-11-25"],
  ["last fortnight", "2026-11-12", "2026-11-25"],
  ["3/2/2026", "2026-02-03", "2026-02-03"],
  ["before 3/2/2026", null, "2026-02-02"],
  ["after 5 march", "2026-03-06", null],
  ["until 2025-12-31", null, "2025-12-31"],
  ["from 2 march to 5 march", "2026-03-02", "2026-03-05"],
  ["between 1.3.2026 and 8.3.2026", "2026-03-01", "2026-03-08"],
  ["30 december", "2025-12-30", "2025-12-30"],
  ["since may", "2026-05-01", null],
]

test.each(days)("%s", (text, from, to) => {
  expect(conditionsOf(text)).toEqual([{ kind: "days", from, to }])
})

const value = (whose: object, field: string, sign: string, number: number) => ({
  kind: "value",
  whose,
  field,
  sign,
  value: number,
})
const anyBond = { any: "bond" }
const values: readonly [string, object][] = [
  ["bonds under 10", value(anyBond, "size", "<", 10)],
  ["bonds under ten", value(anyBond, "size", "<", 10)],
  ["readings over 0.05", value({ any: "part" }, "reading", ">", 0.05)],
  ["gas reading at least .02 ohms", value({ item: "gas" }, "reading", ">=", 0.02)],
  ["gas under 10", value({ item: "gas" }, "size", "<", 10)],
  ["gas over 0.05", value({ item: "gas" }, "reading", ">", 0.05)],
  ["10 square bonds on water", value({ item: "water" }, "size", "=", 10)],
  ["water 10mm2", value({ item: "water" }, "size", "=", 10)],
  ["readings on gas over 0.05", value({ item: "gas" }, "reading", ">", 0.05)],
  ["lengths over 20 m", value({ any: "part" }, "length", ">", 20)],
  ["clamps over 600 mm", value(anyBond, "clamp", ">", 600)],
  ["flour silo frame under 6", value({ item: "flour_silo_frame" }, "size", "<", 6)],
  ["earthing conductor < 16", value({ item: "earthing_conductor" }, "size", "<", 16)],
  ["bonds without a reading", { kind: "recorded", whose: anyBond, field: "reading", not: true }],
  ["gas no size", { kind: "recorded", whose: { item: "gas" }, field: "size", not: true }],
  ["water reading", { kind: "recorded", whose: { item: "water" }, field: "reading", not: false }],
  ["gas over range", { kind: "overRange", whose: { item: "gas" } }],
]

test.each(values)("%s", (text, condition) => {
  expect(conditionsOf(text)).toEqual([condition])
})

const state = (name: string, not = false) => ({ kind: "state", state: name, not })
const words = (where: string, ...said: string[]) => ({ kind: "words", words: said, in: where })
const others: readonly [string, readonly object[]][] = [
  ["gas", [{ kind: "has", item: "gas", not: false }]],
  ["no gas", [{ kind: "has", item: "gas", not: true }]],
  ["PME", [{ kind: "supply", arrangement: "TN-C-S" }]],
  ["tn-s", [{ kind: "supply", arrangement: "TN-S" }]],
  ["not signed", [state("signed", true)]],
  ["to look at", [state("open")]],
  ["jobs with open stops", [state("stop")]],
  ["no stops", [state("stop", true)]],
  ["kept", [state("kept")]],
  ["bakery with the flat above", [words("either", "bakery", "flat", "above")]],
  ["at the village hall", [words("place", "village", "hall")]],
  ["said stop valve", [words("said", "stop", "valve")]],
  ["14 mill lane", [words("either", "14", "mill", "lane")]],
  ["under the stairs", [words("either", "under", "stairs")]],
  ["gas meter cupboard", [words("either", "gas", "meter", "cupboard")]],
  ['"no gas here"', [words("either", "no", "gas", "here")]],
]

test.each(others)("%s", (text, conditions) => {
  expect(conditionsOf(text)).toEqual(conditions)
})

describe("what is not understood is handed back with a reason", () => {
  test.each([
    ["under 10", "under 10", /say of what/],
    ["gas 32/13/2026", "32/13/2026", /no such day/],
    ["5 march to 2 march", "5 march to 2 march", /before the first/],
    ["reading under 10 mm", "reading under 10 mm", /unit/],
    ["gas or oil", "or", /have to hold/],
  ])("%s", (text, part, because) => {
    expect(readQuery(text, context).notUnderstood).toEqual([
      expect.objectContaining({ text: part, because: expect.stringMatching(because) }),
    ])
  })
})

test("several conditions stand in the order of the words, and each knows its place in the text", () => {
  const text = "Gas under 10 last week at the bakery"
  const read = readQuery(text, context).understood
  expect(read.map((one) => text.slice(one.from, one.to))).toEqual(["Gas under 10", "last week", "at the bakery"])
})

test("taking one condition's words out leaves the other conditions as they were", () => {
  const text = "open warnings gas reading over 0.05 since 1 march at the village hall kept"
  const all = readQuery(text, context).understood
  expect(all.length).toBe(5)
  for (const [index, { from, to }] of all.entries()) {
    const rest = all.filter((_, other) => other !== index).map((one) => one.condition)
    expect(conditionsOf(text.slice(0, from) + text.slice(to))).toEqual(rest)
  }
})

test("whatever is typed is read without end or fault, each place in the text at most once", () => {
  const piece = fc.constantFrom(
    "gas",
    "under",
    "10",
    "0.05",
    "last",
    "week",
    "to",
    "at",
    "no",
    "“",
    "/",
    "may",
    "m",
    "é",
    "-",
  )
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece, { maxLength: 9 }).map((all) => all.join(" ")),
      ),
      (text) => {
        const { understood, notUnderstood } = readQuery(text, context)
        let end = 0
        for (const { from, to } of [...understood, ...notUnderstood].sort((a, b) => a.from - b.from)) {
          expect(from).toBeGreaterThanOrEqual(end)
          expect(to).toBeGreaterThan(from)
          end = to
        }
        expect(end).toBeLessThanOrEqual(text.length)
      },
    ),
    { numRuns: 500 },
  )
})

test("no word of place or speech is lost: every one that sets nothing else is looked for", () => {
  const wordsIn = (condition: Condition) => (condition.kind === "words" ? condition.words : [])
  expect(conditionsOf("mill lane bakehouse gas copper strap").flatMap(wordsIn)).toEqual([
    "mill",
    "lane",
    "bakehouse",
    "copper",
    "strap",
  ])
})
