/** Whole jobs: order of work, what is left, what may be signed, and how a finding is laid open. */
import { expect, test } from "vitest"
import type { Situation } from "../../src/facts/Situation"
import { createChecker } from "../../src/rules/createChecker"
import { explain } from "../../src/rules/explain"
import { findPack } from "../../src/rules/packs"
import { readyToSign } from "../../src/rules/readyToSign"
import { situation } from "./situations"

const check = (one: Situation) => createChecker(findPack("uk-bs7671")!).check(one)
const pme = { arrangement: "TN-C-S", neutralMm2: 25 } as const
const find = (one: Situation, rule: string) => check(one).findings.filter((finding) => finding.rule === rule)

test("an end that comes off before the supply is proved dead stops everything", () => {
  const job = situation(pme, { item: "water", csaMm2: 10, steps: ["one_end_disconnected"] })
  const [first] = check(job).findings
  expect(first).toMatchObject({
    rule: "provedDeadFirst",
    severity: "stop",
    item: "water",
    rests: ["water.one_end_disconnected"],
  })
  expect(
    find(
      situation({ ...pme, provedDead: true }, { item: "water", steps: ["one_end_disconnected"] }),
      "provedDeadFirst",
    ),
  ).toMatchObject([{ severity: "ok", rests: ["water.one_end_disconnected", "job.dead"] }])
})

test("opening the earthing conductor says that the whole installation has no earth", () => {
  const job = situation(pme, { item: "earthing_conductor", steps: ["one_end_disconnected"] })
  expect(find(job, "provedDeadFirst")[0]!.shown).toContain("whole installation has no earth")
})

const withOrder = (on: number | undefined, off: number): Situation => {
  const job = situation(
    { ...pme, provedDead: true },
    { item: "gas", ohms: 0.03, steps: ["connected_to_met", "one_end_disconnected"] },
  )
  const [gas] = job.items
  if (on !== undefined) gas!.steps.connected_to_met!.order = on
  gas!.steps.one_end_disconnected!.order = off
  return job
}

test.each([
  [9, 5, "ok"],
  [5, 5, "warn"],
  [3, 5, "warn"],
  [undefined, 5, "note"],
] as const)("connected at %s, off at %d: %s", (on, off, severity) => {
  expect(find(withOrder(on, off), "endIsBackOn")).toMatchObject([{ severity }])
})

test("what is left is asked once, in the order of work", () => {
  const { missing } = check(situation({ arrangement: "TN-C-S" }, { item: "water" }))
  expect(missing.filter((one) => one.item === "water").map((one) => one.kind)).toEqual([
    "conductor_csa",
    "distance",
    "step:pipe_cleaned",
    "step:clamp_fitted",
    "step:one_end_disconnected",
    "length",
    "resistance",
    "step:connected_to_met",
    "step:label_fitted",
  ])
  expect(missing.filter((one) => one.kind === "step:leads_nulled")).toHaveLength(1)
})

test("conditions that are met already are not asked for before the reading", () => {
  const { missing } = check(
    situation({ ...pme, provedDead: true, leadsNulled: true }, { item: "water", steps: ["one_end_disconnected"] }),
  )
  expect(missing.map((one) => one.kind)).not.toContain("step:leads_nulled")
  expect(missing.map((one) => one.kind)).not.toContain("step:one_end_disconnected")
  expect(missing.map((one) => one.kind)).toContain("resistance")
})

test("what the collector of values may add later is judged too", () => {
  const job = situation(
    { ...pme, provedDead: true },
    { item: "electrode", ohms: 250 },
    { item: "bathroom_supplementary", csaMm2: 2.5 },
    { item: "water" },
    { item: "earthing_conductor", csaMm2: 10 },
  )
  job.supply.zeOhms = { value: 0.4 as never, entry: "ze" }
  job.supply.faultKa = { value: 17, entry: "fault" }
  job.supply.residualMa = { value: 30, entry: "residual" }
  job.supply.lineMm2 = { value: 25 as never, entry: "line" }
  job.items[1]!.joins = {
    between: { value: "two extraneous", entry: "joins" },
    mechanicallyProtected: { value: false, entry: "guard" },
  }
  job.items[2]!.atEntry = { toMetOhms: { value: 22_500 as never, entry: "toMet" } }
  const { findings } = check(job)
  const of = (rule: string) => findings.find((one) => one.rule === rule)
  expect(of("electrodeOhms")).toMatchObject({ severity: "warn", rests: ["electrode.ohms", "residual"] })
  expect(of("supplementarySize")).toMatchObject({ severity: "stop", inputs: { leastMm2: 4 } })
  expect(of("partNeedsBond")).toMatchObject({ severity: "note", which: "in doubt", rests: ["toMet"] })
  expect(of("zeIsUsual")).toMatchObject({ severity: "note", inputs: { usualOhms: 0.35 } })
  expect(of("faultCurrentIsDeclared")).toMatchObject({ severity: "note", inputs: { mostKa: 16 } })
  expect(of("earthingConductorSize")).toMatchObject({ severity: "warn", which: "by table", inputs: { leastMm2: 16 } })
  job.earthing = { buried: { value: true, entry: "buried" } }
  expect(find(job, "earthingConductorSize")[0]).toMatchObject({ severity: "stop", inputs: { leastMm2: 25 } })
})

test("a stop keeps a job from being signed until it is kept with a reason; a warning does not", () => {
  const checked = check(situation({ ...pme, provedDead: true }, { item: "water", csaMm2: 6, distanceMm: 900 }))
  const now = readyToSign(checked)
  expect(now.mayBeSigned).toBe(false)
  expect(now.stops.map((one) => one.rule)).toEqual(["mainBondSize"])
  expect(now.warns.map((one) => one.rule)).toEqual(["clampNearEntry"])
  expect(now.missing).toEqual(checked.missing)
  const kept = readyToSign(checked, (finding) => finding.severity === "stop")
  expect(kept).toMatchObject({ mayBeSigned: true, stops: [] })
  expect(kept.warns).toHaveLength(1)
})

test("a finding lays open its values, its table row, its formula with numbers in, and its source", () => {
  const job = situation({ ...pme, provedDead: true }, { item: "water", csaMm2: 10, lengthM: 26, ohms: 0.01 })
  const lines = explain(find(job, "readingFitsConductor")[0]!)
  expect(lines).toContain("ohms: 0.01")
  expect(lines).toContain("Table: 10 mm² copper: 1.83 Ω/km at 20 °C")
  expect(lines).toContain("Formula: ohms = ohms per metre × length")
  expect(lines).toContain("With numbers: 0.00183 Ω/m × 26 m")
  expect(lines.find((line) => line.startsWith("Result: "))).toContain("0.04758 Ω")
  expect(lines.at(-1)).toMatch(/^Source: IEC 60228, 2004, .*worked out/)
  const plainOne = explain(find(situation({ polarity: "reversed" }), "polarityIsAsItShouldBe")[0]!)
  expect(plainOne).toHaveLength(2)
})

test("a thin pack says so and judges by physics and order of work alone", () => {
  const us = findPack("us-nec")!
  expect(us.thin).toBe(true)
  const { findings } = createChecker(us).check(
    situation({ provedDead: true }, { item: "water", csaMm2: 10, lengthM: 26, ohms: 0.01 }),
  )
  expect(findings.map((one) => one.rule)).toContain("readingFitsConductor")
  expect(findings.map((one) => one.rule)).not.toContain("mainBondSize")
  expect(findPack("nowhere")).toBeUndefined()
})
