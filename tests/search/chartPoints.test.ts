/** Readings against the band: IEC 60228 gives 1.83 Ω/km for 10 mm², so 26 m should show about 0.048 Ω. */
import { expect, test } from "vitest"
import { chartPoints } from "../../src/search/chartPoints"
import { rowWith } from "./someRows"

const bond = (item: string, lengthM: number, ohms: number | null, mm2 = 10) => ({ item, mm2, lengthM, ohms })

test("each size has a chart, with every reading in, over or under its band", () => {
  const rows = [
    rowWith({ job: "a", parts: [bond("water", 26, 0.05), bond("gas", 26, 0.5), bond("oil", 8, 0.03, 6)] }),
    rowWith({ job: "b", parts: [bond("water", 26, 0.01)] }),
  ]
  const charts = chartPoints(rows)
  expect(charts.map((chart) => chart.mm2)).toEqual([6, 10])
  expect(charts[1]!.points.map((point) => [point.item, point.lies])).toEqual([
    ["water", "in"],
    ["gas", "over"],
    ["water", "under"],
  ])
  const end = charts[1]!.band.at(-1)!
  expect(end.nominal / end.lengthM).toBeCloseTo(0.00183, 6)
})

test("over range, a reading with a limit, and parts without a size or a length are no points", () => {
  const parts = [
    bond("water", 26, null),
    { ...bond("gas", 8, 0.1), limit: "<" as const },
    { item: "oil", ohms: 0.02 },
    bond("earthing_conductor", 3, 0.01, 16),
  ]
  expect(chartPoints([rowWith({ parts })])).toEqual([])
})

test("one open joint does not press the scale flat, and is counted as beyond it", () => {
  const [chart] = chartPoints([rowWith({ parts: [bond("water", 26, 0.05), bond("gas", 26, 1500)] })])
  expect(chart!.topOhms).toBeLessThan(0.5)
  expect(chart!.beyond).toBe(1)
})
