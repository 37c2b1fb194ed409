/** Sizes of bonds and earthing conductors, and k, against the collected values. */
import { knownServices } from "../../src/facts/Item"
import { adiabaticMm2 } from "../../src/rules/adiabaticMm2"
import { kindOfItem } from "../../src/rules/itemKind"
import { kOf } from "../../src/rules/kOf"
import { leastBuriedMm2, leastEarthingConductorMm2, leastSeparateMm2 } from "../../src/rules/leastEarthingConductorMm2"
import { leastHalfBondMm2, leastMainBondMm2, leastPmeBondMm2 } from "../../src/rules/leastMainBondMm2"
import { leastProtectiveMm2 } from "../../src/rules/leastProtectiveMm2"
import { leastSupplementaryMm2 } from "../../src/rules/leastSupplementaryMm2"
import { mostElectrodeOhms, mostTouchOhms } from "../../src/rules/mostTouchOhms"
import { clampNearEntry } from "../../src/rules/packs/uk-bs7671/clampNearEntry"
import { labelIsOn } from "../../src/rules/packs/uk-bs7671/labelIsOn"
import { partNeedsBond } from "../../src/rules/packs/uk-bs7671/partNeedsBond"
import { adiabaticBounds } from "../../src/rules/tables/adiabaticBounds"
import { mainBondLimits } from "../../src/rules/tables/mainBondLimits"
import { touchVoltage } from "../../src/rules/tables/touchVoltage"
import { type CollectedValue, type Comparison, close, type Make, must, num, numbersIn, same } from "./comparing"

export const bonding: Record<string, Make> = {
  "bs-5441-half": (v) => {
    const { leastMm2, mostMm2 } = mainBondLimits.rows[0]!
    return same([leastMm2, mostMm2], numbersIn(v.expected))
  },
  "bs-5441-ex": (v) => close(leastHalfBondMm2(num(v, "earthing_conductor_required_mm2")), v, 0),
  "bs-548-over": (v) => close(leastPmeBondMm2(151), v, 0),
  "bs-548-": (v) =>
    close(leastMainBondMm2({ arrangement: "TN-C-S", neutralMm2: num(v, "supply_neutral_cu_equiv_mm2") })!, v, 0),
  "bs-5431-pme": () =>
    same(must(leastEarthingConductorMm2({ lineMm2: 16, pmeNeutralMm2: 95 })).leastMm2, leastPmeBondMm2(95)),
  "bs-5441-2-18th": (v) => same([clampNearEntry.limits.mostMm], numbersIn(v.expected).slice(0, 1)),
  "bs-41131-2-ins": () =>
    same(partNeedsBond.judge({ item: "water", insulatingSection: true }), {
      ...partNeedsBond.judge({ item: "gas", insulatingSection: true }),
      spoken: "Water: the pipe is not metal where it comes in, and needs no main bond.",
    }),
  "bs-41131-2": () =>
    same(
      knownServices.map(kindOfItem),
      knownServices.map(() => "main_bond"),
    ),
  "bs-5442-1": () =>
    same(
      [true, false].map((safe) =>
        leastSupplementaryMm2({ between: "two exposed", protectiveMm2: 2.5, mechanicallyProtected: safe }),
      ),
      [2.5, 4],
    ),
  "bs-5442-2": () =>
    same(
      [true, false].map((safe) =>
        leastSupplementaryMm2({ between: "exposed and extraneous", protectiveMm2: 10, mechanicallyProtected: safe }),
      ),
      [6, 6],
    ),
  "bs-5442-3": (v) =>
    same(
      [true, false].map((safe) => leastSupplementaryMm2({ between: "two extraneous", mechanicallyProtected: safe })),
      numbersIn(v.expected).slice(0, 2),
    ),
  "bs-5431-1-min": (v) => same([leastSeparateMm2(true), leastSeparateMm2(false)], numbersIn(v.expected)),
  "bs-4152-2": (v) => same(touchVoltage.rows[0]!.volts, numbersIn(v.expected)[0]),
  "bs-4152-ex-RCD": (v) => close(mostElectrodeOhms(30), v, 0.4),
  "bs-4152-ex": (v) => close(mostTouchOhms(num(v, "Ia_A")), v, 0.0001),
  "bs-541-both": (v) => close(leastBuriedMm2({ corrosionProtected: true, mechanicallyProtected: true }).leastMm2, v, 0),
  "bs-541-corr": (v) =>
    same(
      [
        leastBuriedMm2({ corrosionProtected: true }).leastMm2,
        leastBuriedMm2({ corrosionProtected: true, metal: "steel" }).leastMm2,
      ],
      numbersIn(v.expected),
    ),
  "bs-541-none": (v) =>
    same(
      [leastBuriedMm2({ mechanicallyProtected: true }).leastMm2, leastBuriedMm2({ metal: "steel" }).leastMm2],
      numbersIn(v.expected),
    ),
  "bs-51413": () => same(labelIsOn.of, ["main_bond", "electrode"]),
}

/** The insulations of a line: "70C/90C thermoplastic" stands for both. */
const insulationsOf = (text: string) =>
  text.startsWith("70C/90C") ? ["70C thermoplastic", "90C thermoplastic"] : [text]
const metals: Record<string, string> = { Cu: "copper", Al: "aluminium", steel: "steel", lead: "lead" }
const runOf = (situation: string) =>
  ({ not: "notInCable", "in ": "inCable", she: "sheath", ste: "conduit" })[situation.slice(0, 3)] as "inCable"

/** Every k of a line, with the small area first where two are given. */
const kOfLine = (value: CollectedValue): Comparison => {
  const run = runOf(String(value.inputs.situation))
  const metal = metals[String(value.inputs.material)]!
  const insulation = String(value.inputs.insulation)
  const k = (name: string, csaMm2 = 0) => must(kOf({ run, metal, insulation: name, csaMm2 })).k
  if (typeof value.expected === "string")
    return same(
      ["70C thermoplastic", "90C thermoplastic", "90C thermosetting"].map((name) => k(name)),
      numbersIn(value.expected),
    )
  const names = insulationsOf(insulation)
  const each = names.map((name) => ({ "csa<=300": k(name, 300), "csa>300": k(name, 301) }))
  const want =
    typeof value.expected === "number" ? { "csa<=300": value.expected, "csa>300": value.expected } : value.expected
  return same(
    each,
    names.map(() => want),
  )
}

const kFromMemory: Record<string, Parameters<typeof kOf>[0]> = {
  "k-mem-0": { run: "inCable", metal: "aluminium", insulation: "70C thermoplastic" },
  "k-mem-1": { run: "inCable", metal: "aluminium", insulation: "90C thermosetting" },
  "k-mem-2": { run: "notInCable", metal: "copper", insulation: "60C rubber" },
  "k-mem-3": { run: "notInCable", metal: "copper", insulation: "85C rubber" },
  "k-mem-4": { run: "bare", metal: "copper", insulation: "visible, restricted area" },
  "k-mem-5": { run: "bare", metal: "copper", insulation: "normal conditions" },
  "k-mem-6": { run: "bare", metal: "copper", insulation: "fire risk" },
}

export const heat: Record<string, Make> = {
  "bs-5431-3": (v) =>
    same(
      [must(adiabaticMm2({ faultA: 100, seconds: 4, k: 2 })), adiabaticBounds.rows[0]!.mostSeconds],
      [100, numbersIn(v.expected).at(-1)],
    ),
  "k-54": kOfLine,
  "k-mem": (v) => {
    const found = must(kOf(kFromMemory[v.id]!))
    return same([found.k, found.status], [v.expected, "memory"])
  },
  "bs-547-S<=16": () => same([1, 10, 16].map(leastProtectiveMm2), [1, 10, 16]),
  "bs-547-16<S<=35": (v) => same([16.1, 25, 35].map(leastProtectiveMm2), Array(3).fill(Number(v.expected))),
  "bs-547-S>35": () => same([35.2, 50, 95].map(leastProtectiveMm2), [17.6, 25, 47.5]),
  "bs-547-100A": (v) => close(must(leastEarthingConductorMm2({ lineMm2: num(v, "tails_mm2") })).leastMm2, v, 0),
}
