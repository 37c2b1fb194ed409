/** The checker over whole situations: order, what is missing, what a finding rests on, and that memory changes nothing. */
import { expect, test } from "vitest"
import { createChecker } from "../../src/rules/createChecker"
import { findPack } from "../../src/rules/packs"
import { situation } from "./situations"

const pack = findPack("uk-bs7671")!
const check = (...given: Parameters<typeof situation>) => createChecker(pack).check(situation(...given))
const pme = { arrangement: "TN-C-S", neutralMm2: 25, provedDead: true } as const

test("a bond that is too small for a PME supply is a stop that names value, limit and what to do", () => {
  const { findings } = check(pme, { item: "water", csaMm2: 4 })
  expect(findings[0]).toMatchObject({
    rule: "mainBondSize",
    item: "water",
    severity: "stop",
    spoken: "Water: four square is too small. Ten is the least. Fit a bigger one.",
    rests: ["water.csa", "supply.arrangement", "supply.neutral"],
  })
})

test("without PME the bond follows the earthing conductor, and the finding says that it is the fitted one", () => {
  const { findings } = check(
    { arrangement: "TN-S", provedDead: true },
    { item: "earthing_conductor", csaMm2: 16 },
    { item: "gas", csaMm2: 6 },
  )
  const size = findings.find((finding) => finding.rule === "mainBondSize")!
  expect(size.severity).toBe("stop")
  expect(size.shown).toContain("fitted")
  expect(size.inputs).toMatchObject({ leastMm2: 10, earthingMm2: 16 })
})

test.each([
  [{}, "earthing_arrangement", "supply"],
  [{ arrangement: "TN-C-S" }, "neutral_csa", "supply"],
  [{ arrangement: "TT" }, "conductor_csa", "earthing_conductor"],
] as const)("with %j known it is missing %s of %s", (supply, kind, item) => {
  const { findings, missing } = check(supply, { item: "water", csaMm2: 10 })
  expect(missing).toContainEqual({ rule: "mainBondSize", kind, item })
  expect(findings.filter((finding) => finding.rule === "mainBondSize")).toEqual([])
})

test("a reading far under its band warns, one inside it does not", () => {
  const low = check(pme, { item: "water", csaMm2: 10, lengthM: 26, ohms: 0.01 }).findings
  expect(low[0]).toMatchObject({ rule: "readingFitsConductor", severity: "warn", which: "below" })
  expect(low[0]!.shown).toContain("assumed")
  for (const reading of [
    { lengthM: 26, ohms: 0.05 },
    { lengthM: 8, ohms: 0.03 },
  ]) {
    const { findings } = check(pme, { item: "water", csaMm2: 10, ...reading })
    expect(findings.filter((one) => one.severity === "warn" || one.severity === "stop")).toEqual([])
  }
})

test("findings come worst first, then in the order of the items", () => {
  const { findings } = check(
    pme,
    { item: "gas", csaMm2: 10, distanceMm: 900, ohms: 0.03, lengthM: 8, nulled: false },
    { item: "water", csaMm2: 6 },
    { item: "oil", csaMm2: 6 },
  )
  const order = ["stop", "warn", "note", "ok"]
  const ranks = findings.map((finding) => order.indexOf(finding.severity))
  expect(ranks).toEqual([...ranks].sort())
  expect(findings.slice(0, 2).map((finding) => finding.item)).toEqual(["water", "oil"])
})

test("a checker that remembers says what a fresh one says, and hands back what did not change", () => {
  const checker = createChecker(pack)
  const before = checker.check(situation(pme, { item: "water", csaMm2: 10 }, { item: "gas", csaMm2: 10 }))
  const next = situation(pme, { item: "water", csaMm2: 10 }, { item: "gas", csaMm2: 6 })
  const after = checker.check(next)
  expect(after).toEqual(createChecker(pack).check(next))
  const ofWater = (one: typeof before) => one.findings.find((finding) => finding.item === "water")
  expect(ofWater(after)).toBe(ofWater(before))
})

test("what is written alike counts as unchanged, even when it is another object", () => {
  const checker = createChecker(pack)
  const job = () => situation(pme, { item: "water", csaMm2: 10, lengthM: 8, ohms: 0.02 })
  const reading = () => checker.check(job()).findings.find((finding) => finding.rule === "readingFitsConductor")
  expect(reading()).toBe(reading())
  const set = job()
  set.instrument = { ...set.instrument, digits: 5 }
  const before = reading()
  expect(checker.check(set).findings.find((one) => one.rule === "readingFitsConductor")).not.toBe(before)
})
