/** Just at and just over the end of every line of a table that goes by ranges, with the figures written out by hand. */
import { expect, test } from "vitest"
import { disconnectionSeconds, isFinalCircuit } from "../../src/rules/disconnectionSeconds"
import { leastHalfBondMm2, leastPmeBondMm2 } from "../../src/rules/leastMainBondMm2"
import { leastProtectiveMm2 } from "../../src/rules/leastProtectiveMm2"
import { leastSupplementaryMm2 } from "../../src/rules/leastSupplementaryMm2"
import { bondingJumperSize, electrodeConductorSize, equipmentConductorSize } from "../../src/rules/necSizes"
import { iecPen } from "../../src/rules/tables/iecPen"
import { supplementaryBonds } from "../../src/rules/tables/supplementaryBonds"
import { must } from "./comparing"

test.each([
  [35, 10],
  [35.5, 16],
  [50, 16],
  [50.5, 25],
  [95, 25],
  [95.5, 35],
  [150, 35],
  [150.5, 50],
])("neutral %d mm²: bond %d mm²", (neutralMm2, bondMm2) => {
  expect(leastPmeBondMm2(neutralMm2)).toBe(bondMm2)
})

test.each([
  [12, 6],
  [12.1, 10],
  [20, 10],
  [20.1, 16],
  [32, 16],
  [32.1, 25],
  [50, 25],
  [400, 25],
])("earthing conductor %d mm²: bond %d mm²", (earthingMm2, bondMm2) => {
  expect(leastHalfBondMm2(earthingMm2)).toBe(bondMm2)
})

test.each([
  [15.5, 15.5],
  [16, 16],
  [16.1, 16],
  [35, 16],
  [35.5, 17.75],
])("line %d mm²: protective %d mm²", (lineMm2, leastMm2) => {
  expect(leastProtectiveMm2(lineMm2)).toBe(leastMm2)
})

test.each([
  [63, true, true],
  [63.5, true, false],
  [32, false, true],
  [32.5, false, false],
])("%d A, sockets %s: final %s", (ratingA, hasSockets, isFinal) => {
  expect(isFinalCircuit(ratingA, hasSockets)).toBe(isFinal)
})

test("the short and the long times by system, and when TT may take those of TN", () => {
  expect([true, false].map((isFinal) => disconnectionSeconds("TN-C-S", isFinal))).toEqual([0.4, 5])
  expect([true, false].map((isFinal) => disconnectionSeconds("TT", isFinal))).toEqual([0.2, 1])
  expect([true, false].map((isFinal) => disconnectionSeconds("TT", isFinal, true))).toEqual([0.4, 5])
})

test.each([
  [66.37, "8"],
  [66.4, "6"],
  [105.5, "6"],
  [105.6, "4"],
  [167.8, "4"],
  [167.9, "2"],
  [350, "2"],
  [350.5, "1/0"],
  [600, "1/0"],
  [600.5, "2/0"],
  [1100, "2/0"],
  [1200, "150 kcmil or more"],
])("copper of %d kcmil: jumper %s", (kcmil, copper) => {
  expect(bondingJumperSize(kcmil, "copper").copper).toBe(copper)
})

test.each([
  ["350", "2"],
  ["351", "1/0"],
  ["600", "1/0"],
  ["601", "2/0"],
  ["1100", "2/0"],
  ["1101", "3/0"],
])("largest conductor %s: electrode conductor %s", (size, copper) => {
  expect(must(electrodeConductorSize(size))).toBe(copper)
})

test("sizes that do not exist are refused", () => {
  expect(electrodeConductorSize("249")).toMatchObject({ ok: false })
  expect(must(electrodeConductorSize("250"))).toBe("2")
  expect(equipmentConductorSize(2001, "copper")).toMatchObject({ ok: false })
  expect(must(equipmentConductorSize(16, "copper"))).toBe("12")
  expect(must(equipmentConductorSize(15, "aluminium"))).toBe("12")
})

test.each([
  [15, "14"],
  [15.5, "12"],
  [20.5, "10"],
  [60.5, "8"],
  [100.5, "6"],
  [200.5, "4"],
  [300.5, "3"],
  [400.5, "2"],
  [500.5, "1"],
  [600.5, "1/0"],
  [800.5, "2/0"],
  [1000.5, "3/0"],
  [1200.5, "4/0"],
  [1600.5, "250"],
])("a device of %d A: equipment conductor %s", (deviceA, copper) => {
  expect(must(equipmentConductorSize(deviceA, "copper"))).toBe(copper)
})

test.each([
  ["two exposed", 2.5, true, 2.5],
  ["two exposed", 2.5, false, 4],
  ["two exposed", 10, false, 10],
  ["exposed and extraneous", 2.5, true, 2.5],
  ["exposed and extraneous", 2.5, false, 4],
  ["exposed and extraneous", 20, true, 10],
  ["exposed and extraneous", 20.2, true, 16],
] as const)("between %s with %d mm², protected %s: %d mm²", (between, protectiveMm2, mechanicallyProtected, mm2) => {
  expect(leastSupplementaryMm2({ between, protectiveMm2, mechanicallyProtected })).toBe(mm2)
})

test("floors that a second rule would hide are right by themselves", () => {
  expect(supplementaryBonds.rows.map((row) => row.leastUnprotectedMm2)).toEqual([4, 4, 4])
  expect(supplementaryBonds.rows.map((row) => row.leastProtectedMm2)).toEqual([null, null, 2.5])
  expect(iecPen.rows.map((row) => row.mostTtMm2)).toEqual([25, 35])
})
