/**
 * The list and the place in it. When the thing in hand is put right it leaves its place in the list, so the value that it
 * was about is found again, or else its neighbour.
 */
import { useMemo, useRef, useState } from "react"
import type { Point } from "../../../review/Point"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { workList } from "../../../review/workList"

export interface Points {
  points: readonly Point[]
  point: Point | null
  choose: (key: string) => void
  /** The key so many rows on, or the first or last one. */
  beside: (by: number) => string | null
}

interface Place {
  key: string
  slot: string | null
  index: number
}

const findAgain = (points: readonly Point[], { key, slot, index }: Place): Point | null =>
  points.find((point) => point.key === key) ??
  points.find((point) => slot !== null && point.held?.slot === slot) ??
  points[Math.min(index, points.length - 1)] ??
  null

export const usePoints = (job: ReviewedJob): Points => {
  const points = useMemo(() => workList(job), [job])
  const [key, setKey] = useState("")
  const place = useRef<Place>({ key: "", slot: null, index: 0 })
  const point = points.find((one) => one.key === key) ?? findAgain(points, place.current)
  if (point) place.current = { key: point.key, slot: point.held?.slot ?? null, index: points.indexOf(point) }
  const beside = (by: number) => {
    const at = point ? points.indexOf(point) : 0
    return points[Math.max(0, Math.min(points.length - 1, at + by))]?.key ?? null
  }
  return { points, point, choose: setKey, beside }
}
