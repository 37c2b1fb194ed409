/**
 * Readings of bonds against size and length, over many jobs, with what a good conductor should show. One chart a size:
 * the band of `expectedOhms` over the length, and every reading as a point that lies in it, over it or under it.
 */
import { isBond } from "../facts/Item"
import type { JobRow } from "../record/JobRow"
import { expectedOhms } from "../rules/expectedOhms"

export type Lies = "in" | "over" | "under"

export interface ChartPoint {
  job: string
  place: string
  item: string
  lengthM: number
  ohms: number
  lies: Lies
}

/** What a meter may show at one length, in ohms. */
export interface BandAt {
  lengthM: number
  low: number
  nominal: number
  high: number
}

export interface SizeChart {
  mm2: number
  points: ChartPoint[]
  /** From no length to the longest, evenly. */
  band: BandAt[]
  longestM: number
  /** The top of the scale: a little over the band or the highest point that is not far off it. */
  topOhms: number
  /** Readings over the top of the scale, drawn at its edge. */
  beyond: number
}

const bandSteps = 24

const bandAt = (mm2: number, lengthM: number): BandAt | null => {
  const band = expectedOhms({ csaMm2: mm2, lengthM })
  return band.ok ? { lengthM, low: band.value.low, nominal: band.value.nominal, high: band.value.high } : null
}

const liesAt = (ohms: number, { low, high }: BandAt): Lies => (ohms < low ? "under" : ohms > high ? "over" : "in")

const pointsOf = (row: JobRow): (ChartPoint & { mm2: number })[] =>
  row.parts.flatMap(({ item, mm2, lengthM, ohms, limit }) => {
    // A reading said with a limit is no point: nobody knows where it lies.
    if (!isBond(item) || mm2 === undefined || lengthM === undefined || typeof ohms !== "number" || limit) return []
    const band = bandAt(mm2, lengthM)
    return band ? [{ job: row.job, place: row.place, item, mm2, lengthM, ohms, lies: liesAt(ohms, band) }] : []
  })

const chartOf = (mm2: number, points: ChartPoint[]): SizeChart => {
  const longestM = Math.max(
    5,
    Math.ceil(points.reduce((longest, point) => Math.max(longest, point.lengthM), 0) / 5) * 5,
  )
  const band = Array.from({ length: bandSteps + 1 }, (_, step) => bandAt(mm2, (longestM * step) / bandSteps)!)
  const topOfBand = band.at(-1)!.high
  const sorted = points.map((point) => point.ohms).sort((a, b) => a - b)
  // One open joint must not press all other points flat: the scale ends at twice the band, and says what lies beyond.
  const topOhms = Math.max(topOfBand, Math.min(sorted.at(-1)!, topOfBand * 2)) * 1.05
  return { mm2, points, band, longestM, topOhms, beyond: sorted.filter((ohms) => ohms > topOhms).length }
}

/** Smallest size first; sizes without a reading have no chart. */
export const chartPoints = (rows: readonly JobRow[]): SizeChart[] => {
  const bySize = new Map<number, ChartPoint[]>()
  for (const { mm2, ...point } of rows.flatMap(pointsOf)) {
    const known = bySize.get(mm2)
    if (known) known.push(point)
    else bySize.set(mm2, [point])
  }
  return [...bySize].sort(([a], [b]) => a - b).map(([mm2, points]) => chartOf(mm2, points))
}
