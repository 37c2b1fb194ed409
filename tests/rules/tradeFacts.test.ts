/** Facts of the trade, each marked "common practice, no source", held against the rules so that none of them can go against a day's work. */
import { expect, test } from "vitest"
import { createChecker } from "../../src/rules/createChecker"
import { expectedOhms } from "../../src/rules/expectedOhms"
import { findPack } from "../../src/rules/packs"
import { must } from "./comparing"
import { type PlainItem, situation } from "./situations"

const house = { arrangement: "TN-C-S", neutralMm2: 25, provedDead: true } as const
const findings = (item: PlainItem) => createChecker(findPack("uk-bs7671")!).check(situation(house, item)).findings
const trouble = (item: PlainItem) => findings(item).filter((one) => one.severity === "stop" || one.severity === "warn")

test.each([10, 16])("%d mm² is a good main bond in a house (common practice, no source)", (csaMm2) => {
  expect(trouble({ item: "water", csaMm2 })).toEqual([])
})

test("within 600 mm of the gas meter, or where the pipe comes in when that cannot be (common practice, no source)", () => {
  expect(trouble({ item: "gas", distanceMm: 550 })).toEqual([])
  const far = trouble({ item: "gas", distanceMm: 900 })
  expect(far).toHaveLength(1)
  expect(far[0]!.severity).toBe("warn")
  expect(far[0]!.shown).toMatch(/practicable.*entry/s)
})

test("open leads read over range, above 99.9 kΩ on a usual instrument (common practice, no source)", () => {
  const open = trouble({ item: "water", csaMm2: 10, lengthM: 8, ohms: 99_900, over: true })
  expect(open.map((one) => one.rule)).toEqual(["bondIsNotOpen"])
  expect(open[0]!.shown).toContain("Open leads read over range too")
})

test("a long lead of 30 m that was not nulled is seen on a short bond (common practice, no source)", () => {
  const lead = must(expectedOhms({ csaMm2: 1.5, lengthM: 30, conductorClass: 5 })).nominal
  expect(lead).toBeGreaterThan(0.3)
  const bond = must(expectedOhms({ csaMm2: 10, lengthM: 8 })).nominal
  const ohms = Math.round((bond + lead) * 100) / 100
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 8, ohms, nulled: false })[0]).toMatchObject({ which: "above" })
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 8, ohms: 0.02, nulled: true })).toEqual([])
})

test("a good bond reads a few hundredths of an ohm (common practice, no source)", () => {
  for (const [csaMm2, lengthM, ohms] of [
    [10, 5, 0.01],
    [10, 12, 0.03],
    [16, 20, 0.03],
    [10, 20, 0.04],
  ] as const)
    expect(trouble({ item: "water", csaMm2, lengthM, ohms })).toEqual([])
})

test("0.00 is the end of a display and no resistance: fine on a short bond, not on a long one (common practice, no source)", () => {
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 6, ohms: 0 })).toEqual([])
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 30, ohms: 0 })[0]).toMatchObject({ which: "below" })
})

test("0.05 Ω decides nothing: it is fine on a long run and too much on a short one", () => {
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 25, ohms: 0.05 })).toEqual([])
  expect(trouble({ item: "water", csaMm2: 10, lengthM: 40, ohms: 0.08 })).toEqual([])
  expect(trouble({ item: "water", csaMm2: 25, lengthM: 2, ohms: 0.05 })[0]).toMatchObject({ which: "above" })
})

test("a spare way left on the terminal is no business of any rule (common practice, no source)", () => {
  expect(findings({ item: "met" }).filter((one) => one.item === "met")).toEqual([])
})
