/** Circuits by hand: rings, loops, conductor classes, times and fault currents. */
import { expect, test } from "vitest"
import { leastBuriedMm2 } from "../../src/rules/leastEarthingConductorMm2"
import { maxZsOhms } from "../../src/rules/maxZsOhms"
import { ohmsPerMetre } from "../../src/rules/ohmsPerMetre"
import { prospectiveFaultA } from "../../src/rules/prospectiveFaultA"
import { rcdTripMs } from "../../src/rules/rcdTripMs"
import { ringChecks } from "../../src/rules/ringChecks"
import { zs } from "../../src/rules/zs"
import { must } from "./comparing"

const sizes = { lineMm2: 2.5, cpcMm2: 1.5 }
const ring = (ends: { r1: number; rn: number; r2: number }) => must(ringChecks(ends, sizes))

test("a good ring: like ends, the protective one in proportion, a quarter of both across", () => {
  expect(ring({ r1: 0.6, rn: 0.6, r2: 1 })).toEqual({ alike: true, inProportion: true, r1r2Ohms: 0.4 })
})

test.each([
  [0.6, 0.65, true],
  [0.65, 0.6, true],
  [0.6, 0.66, false],
  [0.66, 0.6, false],
])("line %d Ω and neutral %d Ω are alike: %s", (r1, rn, alike) => {
  expect(ring({ r1, rn, r2: 1 }).alike).toBe(alike)
})

test.each([
  // 12.1 / 7.41 = 1.633 less 0.05, and 2.5 / 1.5 = 1.667 and 0.05.
  [1, 1.582, false],
  [1, 1.584, true],
  [1, 1.716, true],
  [1, 1.717, false],
])("r1 %d Ω with r2 %d Ω is in proportion: %s", (r1, r2, inProportion) => {
  expect(ring({ r1, rn: r1, r2 }).inProportion).toBe(inProportion)
})

test("a ring of a size that no table lists is refused", () => {
  expect(ringChecks({ r1: 1, rn: 1, r2: 1 }, { lineMm2: 2.6, cpcMm2: 1.5 })).toMatchObject({ ok: false })
  expect(ringChecks({ r1: 1, rn: 1, r2: 1 }, { lineMm2: 2.5, cpcMm2: 1.6 })).toMatchObject({ ok: false })
})

test("solid copper has the stranded figure up to 150 mm² and its own above; other classes borrow nothing", () => {
  expect(must(ohmsPerMetre({ csaMm2: 10, conductorClass: 1 }))).toBe(0.00183)
  expect(must(ohmsPerMetre({ csaMm2: 185, conductorClass: 1 }))).toBeCloseTo(0.000101, 12)
  expect(must(ohmsPerMetre({ csaMm2: 185 }))).toBeCloseTo(0.0000991, 12)
  expect(ohmsPerMetre({ csaMm2: 16, metal: "aluminium", conductorClass: 5 })).toMatchObject({ ok: false })
  expect(must(ohmsPerMetre({ csaMm2: 16, metal: "aluminium", conductorClass: 1 }))).toBeCloseTo(0.00191, 12)
})

test("Ohm's law at 230 V, unless another voltage is given", () => {
  expect(prospectiveFaultA(0.23)).toBeCloseTo(1000, 9)
  expect(prospectiveFaultA(0.5, 100)).toBe(200)
})

test("a loop adds what comes in and what the circuit adds, warm or not", () => {
  expect(zs({ ze: 0.3, r1r2: 0.5 })).toBeCloseTo(0.8, 12)
  expect(zs({ ze: 0.3, r1r2: 0.5, warmFactor: 1.2 })).toBeCloseTo(0.9, 12)
})

test.each([
  ["B", 0.4, 5],
  ["B", 5, 5],
  ["C", 0.4, 10],
  ["C", 5, 10],
  ["D", 0.4, 20],
  ["D", 0.41, 10],
  ["D", 5, 10],
] as const)("type %s within %d s opens at %d times its rating", (device, seconds, multiple) => {
  expect(must(maxZsOhms({ device, ratingA: 10, seconds })).operatingA).toBe(multiple * 10)
})

test.each(["B", "C", "D"] as const)("type %s is not reckoned for more than five seconds", (device) => {
  expect(maxZsOhms({ device, ratingA: 10, seconds: 5.1 })).toMatchObject({ ok: false })
})

test("what is in the ground, by metal and by what protects it", () => {
  const least = (metal: "copper" | "steel", corrosionProtected: boolean, mechanicallyProtected: boolean) =>
    leastBuriedMm2({ metal, corrosionProtected, mechanicallyProtected }).leastMm2
  expect([
    least("copper", true, true),
    least("copper", true, false),
    least("copper", false, true),
    least("copper", false, false),
  ]).toEqual([2.5, 16, 25, 25])
  expect([
    least("steel", true, true),
    least("steel", true, false),
    least("steel", false, true),
    least("steel", false, false),
  ]).toEqual([10, 16, 50, 50])
})

test("a trip time is known for the usual tests only", () => {
  expect(rcdTripMs("general", 3)).toBe(null)
  expect(rcdTripMs("delayed", 5)).toEqual({ leastMs: 50, mostMs: 150, status: "memory" })
})
