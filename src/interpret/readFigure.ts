/**
 * One figure as an engine wrote it: "0,02", "1,200", "0..05", "005", "16:14". A leading zero cannot begin a thousands
 * group, two digits after a comma cannot be one, and leading zeros without a point have lost it.
 */
import type { NumberDoubt } from "./NumberReading"

export interface Figure {
  text: string
  shape: "whole" | "decimal" | "clock" | "fraction" | "none"
  lead: "nought" | "nothing" | "whole" | null
  hasThousandsComma: boolean
  doubt: NumberDoubt | null
}

const sure = (
  text: string,
  shape: Figure["shape"],
  lead: Figure["lead"] = null,
  hasThousandsComma = false,
): Figure => ({
  text,
  shape,
  lead,
  hasThousandsComma,
  doubt: null,
})
const doubtful = (candidates: readonly number[], because: string, shape: Figure["shape"] = "none"): Figure => ({
  text: "0",
  shape,
  lead: null,
  hasThousandsComma: false,
  doubt: { candidates: [...new Set(candidates)], because },
})

/** Reads one figure; what cannot be trusted comes back with a doubt. */
export function readFigure(written: string): Figure {
  if (/^\d+$/.test(written)) return readWhole(written)
  if (/^\d{1,3}(,\d{3})+$/.test(written) && !written.startsWith("0"))
    return sure(written.replaceAll(",", ""), "whole", null, true)
  const decimal = /^(\d*)[.,](\d+)$/.exec(written)
  if (decimal) return readDecimal(decimal[1]!, decimal[2]!)
  const clock = /^(\d{1,2}):(\d{2})$/.exec(written)
  if (clock) return readClock(clock[1]!, clock[2]!)
  const fraction = /^([1-9])\/([248])$/.exec(written)
  if (fraction && Number(fraction[1]) < Number(fraction[2]))
    return sure(String(Number(fraction[1]) / Number(fraction[2])), "fraction")
  const pieces = written.split(/[.,:/]+/).filter((piece) => piece !== "")
  return doubtful(pieceCandidates(pieces), "the figures came through broken")
}

function readWhole(written: string): Figure {
  if (!/^0\d/.test(written)) return sure(written, "whole")
  return doubtful(lostPoint(written), "the point was not heard")
}

function readDecimal(whole: string, decimals: string): Figure {
  if (whole === "") return sure(`0.${decimals}`, "decimal", "nothing")
  if (/^0\d/.test(whole)) return doubtful([Number(`${Number(whole)}.${decimals}`)], "the figures came through broken")
  return sure(`${whole}.${decimals}`, "decimal", whole === "0" ? "nought" : "whole")
}

function readClock(hours: string, minutes: string): Figure {
  const because = "the figures came through as a time"
  if (Number(hours) === 0) return doubtful([Number(`0.${minutes}`)], because, "clock")
  return doubtful([Number(minutes), Number(`${hours}${minutes}`), Number(`${hours}.${minutes}`)], because, "clock")
}

const pieceCandidates = (pieces: readonly string[]): number[] =>
  Number(pieces[0]) === 0
    ? [Number(`0.${pieces.slice(1).join("")}`), ...(pieces.length > 2 ? [Number(`0.${pieces.at(-1)}`)] : [])].filter(
        (value) => value > 0,
      )
    : pieces.map(Number)

/** What digits with a lost point may have been: "05" is 0.05, 0.5 or 5. */
export function lostPoint(digits: string): number[] {
  const tail = digits.replace(/^0+/, "")
  if (tail === "") return []
  const noughts = digits.length - tail.length
  const shifted = noughts === 1 ? [`0.0${tail}`, `0.${tail}`] : [`0.0${tail}`, `0.00${tail}`]
  return [...shifted, tail].map(Number)
}
