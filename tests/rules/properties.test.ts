/** What must hold for any job at all: no throw, the same answer with and without memory, and no gap between the sizes. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { sizesMm2 } from "../../src/facts/Quantity"
import { createChecker } from "../../src/rules/createChecker"
import { expectedOhms } from "../../src/rules/expectedOhms"
import { leastHalfBondMm2, leastPmeBondMm2 } from "../../src/rules/leastMainBondMm2"
import { longestRunM } from "../../src/rules/longestRunM"
import { nextSizeUp } from "../../src/rules/nextSizeUp"
import { packs } from "../../src/rules/packs"
import { must } from "./comparing"
import { type PlainItem, type PlainSupply, situation } from "./situations"

const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: undefined })
const size = fc.constantFrom(...sizesMm2)
const steps = ["pipe_cleaned", "clamp_fitted", "label_fitted", "one_end_disconnected", "connected_to_met"]
const item = fc.record({
  item: fc.constantFrom("water", "gas", "structural_steel", "earthing_conductor", "electrode", "met", "sprinkler_pipe"),
  csaMm2: maybe(size),
  lengthM: maybe(fc.double({ min: 0.1, max: 200, noNaN: true })),
  distanceMm: maybe(fc.integer({ min: 0, max: 5000 })),
  ohms: maybe(fc.option(fc.double({ min: 0, max: 200, noNaN: true }))),
  nulled: fc.boolean(),
  oneEndOff: fc.boolean(),
  steps: fc.subarray(steps),
})
const supply = fc.record({
  arrangement: maybe(fc.constantFrom("TN-S", "TN-C-S", "TT")),
  neutralMm2: maybe(size),
  polarity: maybe(fc.constantFrom("correct", "reversed")),
  provedDead: fc.boolean(),
})
const plain = <T extends object>(record: T) =>
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined))
const job = fc
  .tuple(supply, fc.uniqueArray(item, { maxLength: 5, selector: (one) => one.item }))
  .map(([of, items]) => situation(plain(of) as PlainSupply, ...(items.map(plain) as unknown as PlainItem[])))

test.each(packs.map((pack) => [pack.id, pack] as const))("%s: any run of jobs, with memory and without", (_, pack) => {
  fc.assert(
    fc.property(fc.array(job, { minLength: 1, maxLength: 4 }), (jobs) => {
      const checker = createChecker(pack)
      for (const one of jobs) {
        const checked = checker.check(one)
        expect(checked).toEqual(createChecker(pack).check(one))
        expect(checker.check(one)).toEqual(checked)
        const ranks = checked.findings.map(({ severity }) => ["stop", "warn", "note", "ok"].indexOf(severity))
        expect(ranks).toEqual([...ranks].sort())
        for (const finding of checked.findings)
          expect(finding.status === "memory" && finding.severity !== "note").toBe(false)
      }
    }),
    { numRuns: 25 },
  )
})

test("a value that is missing never makes a size pass", () => {
  fc.assert(
    fc.property(size, (csaMm2) => {
      for (const of of [
        {},
        { arrangement: "TN-C-S" },
        { arrangement: "TN-S" },
        { arrangement: "TT" },
      ] as PlainSupply[]) {
        const { findings, missing } = createChecker(packs[0]!).check(situation(of, { item: "water", csaMm2 }))
        expect(findings.some((one) => one.rule === "mainBondSize" && one.severity === "ok")).toBe(false)
        expect(missing.some((one) => one.rule === "mainBondSize")).toBe(true)
      }
    }),
  )
})

test("a larger neutral or earthing conductor never asks for a smaller bond", () => {
  for (const [at, mm2] of sizesMm2.entries()) {
    const next = sizesMm2[at + 1] ?? 300
    expect(leastPmeBondMm2(next)).toBeGreaterThanOrEqual(leastPmeBondMm2(mm2))
    expect(leastHalfBondMm2(next)).toBeGreaterThanOrEqual(leastHalfBondMm2(mm2))
  }
})

test("the next size up is one that is sold, not under what was asked, and the least of those", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 240, noNaN: true }), (mm2) => {
      const up = nextSizeUp(mm2)!
      expect(sizesMm2).toContain(up)
      expect(up).toBeGreaterThanOrEqual(mm2)
      expect(sizesMm2.filter((one) => one >= mm2 && one < up)).toEqual([])
    }),
  )
  expect(nextSizeUp(240.1)).toBe(null)
})

test("a band holds its middle, grows with length, and a length comes back from its ohms", () => {
  const sizes = fc.constantFrom(1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70)
  fc.assert(
    fc.property(sizes, fc.double({ min: 0.5, max: 100, noNaN: true }), (csaMm2, lengthM) => {
      const band = must(expectedOhms({ csaMm2, lengthM }))
      const longer = must(expectedOhms({ csaMm2, lengthM: lengthM + 1 }))
      expect(band.low).toBeGreaterThanOrEqual(0)
      expect(band.low).toBeLessThan(band.nominal)
      expect(band.high).toBeGreaterThan(band.nominal)
      expect(longer.nominal).toBeGreaterThan(band.nominal)
      expect(longer.high).toBeGreaterThan(band.high)
      expect(must(longestRunM({ csaMm2 }, band.nominal))).toBeCloseTo(lengthM, 6)
    }),
  )
})
