/** What the screen shows, word for word, for one case of each rule that shows a sum: the figures in it are worked by hand. */
import { expect, test } from "vitest"
import { explain } from "../../src/rules/explain"
import { figure, hundredths } from "../../src/rules/figures"
import { mainBondByLargest } from "../../src/rules/packs/iec-60364/mainBondByLargest"
import { earthingConductorSize } from "../../src/rules/packs/uk-bs7671/earthingConductorSize"
import { electrodeOhms } from "../../src/rules/packs/uk-bs7671/electrodeOhms"
import { faultCurrentIsDeclared } from "../../src/rules/packs/uk-bs7671/faultCurrentIsDeclared"
import { mainBondSize } from "../../src/rules/packs/uk-bs7671/mainBondSize"
import { partNeedsBond } from "../../src/rules/packs/uk-bs7671/partNeedsBond"
import { supplementaryOhms } from "../../src/rules/packs/uk-bs7671/supplementaryOhms"
import type { Rule, Values } from "../../src/rules/Rule"
import { sayAbout, sayItem, sayMetres, sayMillimetres, sayOhms, startWithNumber } from "../../src/rules/sayings"
import { bondIsNotOpen } from "../../src/rules/universal/bondIsNotOpen"
import { readingFitsConductor } from "../../src/rules/universal/readingFitsConductor"
import { instrument } from "./situations"

const shown = (rule: Rule, given: Values) => {
  const verdict = rule.judge(given)
  return "shown" in verdict ? verdict : { shown: "", working: undefined, spoken: "" }
}

test("a bond by its neutral", () => {
  expect(shown(mainBondSize, { item: "water", csaMm2: 10, arrangement: "TN-C-S", neutralMm2: 50 })).toMatchObject({
    shown:
      "10 mm² is too small. A PME supply with a neutral of 50 mm² copper equivalent needs a bond of at least 16 mm². " +
      "Copper on both sides.",
    working: {
      row: "neutral 50 mm²: bond 16 mm²",
      formula: "least bond by the size of the supply neutral",
      numbers: "neutral 50 mm² copper equivalent",
      result: "16 mm²",
    },
  })
})

test("a bond by its earthing conductor", () => {
  expect(shown(mainBondSize, { item: "water", csaMm2: 10, arrangement: "TN-S", earthingMm2: 25 })).toMatchObject({
    shown:
      "10 mm² is too small. Half the 25 mm² earthing conductor asks for at least 16 mm². That is the fitted size: the " +
      "rule counts the size that is required, which may be less. Copper on both sides.",
    working: { numbers: "25 mm² / 2 = 12.5 mm²", result: "16 mm²" },
  })
})

test.each([
  [{ arrangement: "TN-C-S" }, "No PME supply needs less than 10 mm²; this one may need more.", "TN-C-S"],
  [{ arrangement: "TT" }, "No supply needs less than 6 mm²; this one may need more.", "TT"],
  [{}, "No supply needs less than 6 mm²; this one may need more.", "arrangement not known yet"],
])("a bond that no supply of %j allows", (supply, sentence, numbers) => {
  const verdict = shown(mainBondSize, { item: "water", csaMm2: 4, ...supply })
  expect(verdict.shown).toBe(`4 mm² is too small. ${sentence} Copper on both sides.`)
  expect(verdict.working?.numbers).toBe(numbers)
})

test("a reading that is too high, with the table's row and the sum", () => {
  const given = { item: "water", csaMm2: 16, lengthM: 14, ohms: 0.06, instrument }
  expect(shown(readingFitsConductor, given)).toMatchObject({
    spoken:
      "Water: nought point nought six ohms is too high. Look for about nought point " +
      "nought two. Look at the joints, then test again.",
    shown:
      "0.06 Ω. 14 m of 16 mm² copper should read about 0.02 Ω, and anything from 0.00 to 0.06 Ω may be good: instrument " +
      "error 2 % and 3 digits of 0.01 Ω (assumed until it is set), 0 to 30 °C, the real conductor, the paced length and " +
      "the joints. A poor joint, a dirty pipe, leads not nulled, or a longer or smaller conductor than was said. Guidance " +
      "as quoted accepts up to 0.1 Ω where less is expected; 0.05 Ω is not a limit. 0.06 Ω fits about 52 m of 16 mm², or " +
      "14 m of 4 or 6 mm². With the point one place over, 0.006 Ω would fit.",
    working: {
      row: "16 mm² copper: 1.15 Ω/km at 20 °C",
      numbers: "0.00115 Ω/m × 14 m",
      result: "0.0161 Ω, band 0 to 0.05647 Ω",
    },
  })
})

test("a reading that fits says no more than that, and an instrument that was set is not called assumed", () => {
  const set = { ...instrument, assumed: false }
  const verdict = shown(readingFitsConductor, { item: "water", csaMm2: 10, lengthM: 26, ohms: 0.05, instrument: set })
  expect(verdict.spoken).toBe("Water: nought point nought five ohms fits twenty six metres of ten square.")
  expect(verdict.shown).toMatch(/^0\.05 Ω\. .*and the joints\.$/)
  expect(verdict.shown).not.toContain("assumed")
})

test("an open bond says the limit where the meter showed one", () => {
  expect(shown(bondIsNotOpen, { item: "gas", ohms: 99.9, ohmsQualifier: ">" }).shown).toMatch(
    /^Over range \(above 99\.9 Ω\): /,
  )
  expect(shown(bondIsNotOpen, { item: "gas", ohms: null, ohmsQualifier: ">" }).shown).toMatch(/^Over range: /)
})

test("the earthing conductor by its floors", () => {
  expect(shown(earthingConductorSize, { csaMm2: 6, arrangement: "TN-C-S" }).shown).toBe(
    "6 mm², at least 10 mm²: no less than the main bonds of a PME supply, neutral not known yet. A distributor may ask " +
      "for 16 mm² or more.",
  )
  expect(shown(earthingConductorSize, { csaMm2: 10, arrangement: "TN-C-S", neutralMm2: 95 }).shown).toContain(
    "at least 25 mm²: no less than the main bonds of a PME supply, neutral 95 mm².",
  )
  expect(
    shown(earthingConductorSize, { csaMm2: 10, arrangement: "TT", buried: true, corrosionProtected: true }).shown,
  ).toContain("at least 16 mm²: buried copper, protected against corrosion.")
  expect(
    shown(earthingConductorSize, { csaMm2: 1.5, arrangement: "TT", buried: true, mechanicallyProtected: true }).shown,
  ).toContain("at least 25 mm²: buried copper, protected against damage.")
  const both = { buried: true, corrosionProtected: true, mechanicallyProtected: true }
  expect(shown(earthingConductorSize, { csaMm2: 1.5, arrangement: "TT", ...both }).shown).toContain(
    "at least 2.5 mm²: buried copper, protected against corrosion and damage.",
  )
  expect(shown(earthingConductorSize, { csaMm2: 10, arrangement: "TT", buried: true }).shown).toContain(
    "at least 25 mm²: buried copper, not protected.",
  )
})

test("an electrode's limit is cut, not rounded up, and an unknown device is taken for the usual one", () => {
  expect(shown(electrodeOhms, { item: "electrode", ohms: 1667, residualMa: 30 })).toMatchObject({
    spoken:
      "Electrode: one thousand six hundred and sixty seven ohms is too much. One thousand six hundred and sixty six is the " +
      "most. Make it less first.",
    shown: "Above 50 V / 30 mA = 1666.6 Ω, the most that lets this residual current device work.",
    inputs: { mostOhms: 1666.6 },
  })
  expect(shown(electrodeOhms, { item: "electrode", ohms: 1700 }).shown).toContain("= 1666.6 Ω, ")
  expect(shown(electrodeOhms, { item: "electrode", ohms: 1700 }).shown).toContain("(30 mA, the smallest usual one)")
  expect(shown(electrodeOhms, { item: "electrode", ohms: null }).spoken).toMatch(
    /^Electrode: the meter finds no way to earth\. One/,
  )
  expect(shown(electrodeOhms, { item: "electrode", ohms: 50, residualMa: 300 }).shown).toBe(
    "No more than 50 V / 300 mA = 166.6 Ω, and no more than 200 Ω.",
  )
})

test("a supplementary bond shows its limit cut, not rounded", () => {
  expect(shown(supplementaryOhms, { item: "bathroom_supplementary", ohms: 2000, residualMa: 30 })).toMatchObject({
    shown: "2000 Ω between the parts; no more than 50 V / 30 mA = 1666.6 Ω is wanted.",
    inputs: { mostOhms: 1666.6 },
  })
})

test("an extraneous part names both limits in kilohms", () => {
  expect(shown(partNeedsBond, { item: "water", toMetOhms: 22_500 })).toMatchObject({
    shown:
      "22500 Ω to the main terminal: in doubt (limits 23 kΩ without a body, 22 kΩ with one, at 10 mA). The test is guidance, " +
      "not a regulation.",
    working: { numbers: "230 V / 10 mA, less 1000 Ω" },
    inputs: { clearOhms: 23_000, bodyOhms: 22_000 },
  })
})

test("a fault current names its phases", () => {
  expect(shown(faultCurrentIsDeclared, { faultKa: 16.1 }).shown).toContain("16 kA is the declared most for one phase.")
  expect(shown(faultCurrentIsDeclared, { faultKa: 9, phases: 3 }).shown).toBe(
    "9 kA; 25 kA is the declared most for three phases.",
  )
})

test.each([
  [6, 10, "6 mm². Half of the largest protective conductor, taken as 10 mm², gives 6 mm². ", "big enough"],
  [6, 16, "6 mm². Half of the largest protective conductor, taken as 16 mm², gives 10 mm². ", "too small"],
  [10, 16, "10 mm². Half of the largest protective conductor, taken as 16 mm², gives 10 mm². ", "big enough"],
  [25, 70, "25 mm². Half of the largest protective conductor, taken as 70 mm², gives 25 mm². ", "big enough"],
  [16, 70, "16 mm². Half of the largest protective conductor, taken as 70 mm², gives 25 mm². ", "too small"],
])("the international half rule from memory: bond %d, protective %d", (csaMm2, earthingMm2, start, word) => {
  const verdict = shown(mainBondByLargest, { item: "water", csaMm2, earthingMm2 })
  expect(verdict.shown.startsWith(start)).toBe(true)
  expect(verdict.spoken).toContain(word)
})

test("values are printed with the digits they carry", () => {
  expect([0.047584, 18.349, 999.96, 1000.4, 1666.67, 22_000.4].map(figure)).toEqual([
    "0.04758",
    "18.35",
    "1000",
    "1000",
    "1667",
    "22000",
  ])
  expect([999.5, 12_345.6].map(figure)).toEqual(["999.5", "12346"])
  expect(hundredths(0.0476)).toBe("0.05")
})

test("values are said with their units, one of them without the plural", () => {
  expect(sayMetres(1)).toBe("one metre")
  expect(sayMetres(2)).toBe("two metres")
  expect(sayMillimetres(1)).toBe("one millimetre")
  expect(sayMillimetres(600)).toBe("six hundred millimetres")
  expect(sayOhms(0.05)).toBe("nought point nought five ohms")
  expect([0, 0.004, 0.006, 0.047, 0.456, 0.494].map(sayAbout)).toEqual([
    "under nought point nought one",
    "under nought point nought one",
    "about nought point nought one",
    "about nought point nought five",
    "about nought point four six",
    "about nought point four nine",
  ])
  expect(sayItem("structural_steel")).toBe("Structural steel")
  expect(startWithNumber(16)).toBe("Sixteen")
})

test("nothing that is unknown is laid open", () => {
  const verdict = mainBondSize.judge({ item: "water", csaMm2: 4 })
  if (verdict.verdict !== "fails") throw new Error("expected a fail")
  const lines = explain({
    rule: "mainBondSize",
    source: mainBondSize.source,
    status: "direct",
    rests: [],
    inputs: {},
    ...verdict,
  })
  expect(lines).toContain("leastMm2: 6")
  expect(lines.some((line) => line.startsWith("neutralMm2"))).toBe(false)
  expect(lines.some((line) => line.startsWith("Table: "))).toBe(false)
})
