/** Rows against conditions. A reading that was said with a limit is found only where the condition surely holds. */
import { expect, test } from "vitest"
import type { PartRow } from "../../src/record/JobRow"
import { matches, type RowCondition } from "../../src/search/matches"
import { readQuery } from "../../src/search/readQuery"
import { rowWith } from "./someRows"

const context = { today: { year: 2026, month: 11, day: 25 }, items: [] }
const meets = (text: string, change: Parameters<typeof rowWith>[0]) =>
  readQuery(text, context).understood.every((one) => matches(rowWith(change), one.condition as RowCondition))
const gas = (part: Partial<PartRow>) => ({ parts: [{ item: "gas", ...part }] })

test.each([
  ["over 0.05 ohms", { ohms: 0.06 }, true],
  ["over 0.05 ohms", { ohms: 0.05 }, false],
  ["at least 0.05 ohms", { ohms: 0.05 }, true],
  ["under 0.05 ohms", { ohms: 0.04 }, true],
  ["over 0.05 ohms", { ohms: null, limit: ">" as const }, true],
  ["under 0.05 ohms", { ohms: null, limit: ">" as const }, false],
  ["over 1000 ohms", { ohms: 99900, limit: ">" as const }, true],
  ["over 0.05 ohms", { ohms: 0.1, limit: "<" as const }, false],
  ["under 0.1 ohms", { ohms: 0.1, limit: "<" as const }, true],
  ["under 0.1 ohms", { ohms: 0.1, limit: "<=" as const }, false],
  ["reading 0.1", { ohms: 0.1, limit: "<" as const }, false],
  ["over 0.05 ohms", {}, false],
  ["over range", { ohms: null, limit: ">" as const }, true],
  ["over range", { ohms: 99900, limit: ">" as const }, true],
  ["over range", { ohms: 0.05 }, false],
])("%s: %j is %s", (text, part, isMet) => {
  expect(meets(text, gas(part))).toBe(isMet)
})

test("a bond is neither the earthing conductor nor the test leads", () => {
  expect(meets("bonds under 10", { parts: [{ item: "earthing_conductor", mm2: 6 }] })).toBe(false)
  expect(meets("bonds under 10", { parts: [{ item: "flour_silo_frame", mm2: 6 }] })).toBe(true)
  expect(meets("bonds without a reading", { parts: [{ item: "test_leads" }] })).toBe(false)
  expect(meets("bonds without a reading", { parts: [{ item: "gas", mm2: 10 }] })).toBe(true)
})

test("size and reading have to belong to the same part", () => {
  const parts = [
    { item: "gas", mm2: 10, ohms: 0.01 },
    { item: "water", mm2: 4, ohms: 0.2 },
  ]
  expect(meets("gas over 0.05 ohms", { parts })).toBe(false)
  expect(meets("water over 0.05 ohms", { parts })).toBe(true)
})

test("a job of several days is found on each of them", () => {
  const change = { openedAt: "2026-03-02T16:00:00+00:00", lastAt: "2026-03-04T09:00:00+00:00" }
  expect(meets("3 march 2026", change)).toBe(true)
  expect(meets("5 march 2026", change)).toBe(false)
  expect(meets("before 3 march 2026", change)).toBe(true)
})

test("states, and their opposites", () => {
  expect(meets("open stops", { stops: 1 })).toBe(true)
  expect(meets("to look at", { warns: 1 })).toBe(true)
  expect(meets("no stops", { warns: 1 })).toBe(true)
  expect(meets("kept", { kept: 0 })).toBe(false)
  expect(meets("waiting for a yes", { awaiting: 2 })).toBe(true)
  expect(meets("nobody has said yes", { unseen: 2 })).toBe(true)
  expect(meets("nobody has said yes", { awaiting: 2 })).toBe(false)
  expect(meets("not signed", { signedOff: true })).toBe(false)
  expect(meets("second copies", { copyOf: "other" })).toBe(true)
  expect(meets("pme", { supply: { arrangement: "TN-C-S" } })).toBe(true)
  expect(meets("no gas", gas({}))).toBe(false)
})
