/**
 * What follows the point. Digits are taken one by one, "double oh" twice, a teen as its two digits. A bare "point forty"
 * is not taken: it is said for .40 and heard for .14.
 */

import { type AtomRow, reading } from "./AtomRow"
import type { NumberReading } from "./NumberReading"
import { isEdgeGap } from "./Token"

/** Reads from the point at `point`; the number began at `from`, with `whole` before the point ("" for none). */
export function readDecimals(row: AtomRow, from: number, point: number, whole: string): NumberReading {
  let digits = ""
  let end = point + 1
  let hadTens = false
  for (let atom = row.atoms[end]; atom && !isEdgeGap(row.tokens[end - 1]!.after); atom = row.atoms[end]) {
    const taken = takeDecimal(row, end)
    if (!taken || (hadTens && digits !== "")) break
    digits += taken.digits
    end = taken.end
    hadTens = taken.isTens
  }
  const lead = whole === "" ? "nothing" : whole === "0" ? "nought" : "whole"
  const shape = "decimal" as const
  const text = `${whole || "0"}.${digits}`
  if (digits === "") {
    const because = "nothing was heard after the point"
    return reading(from, end, whole || "0", { shape: "none", lead, doubt: { candidates: [], because } })
  }
  if (Number(text) === 0) {
    return reading(from, end, text, { shape, lead, doubt: { candidates: [], because: "a reading of nought" } })
  }
  if (hadTens && /^\d0$/.test(digits)) {
    const teen = Number(`${whole || "0"}.1${digits[0]}`)
    return reading(from, end, text, {
      shape,
      lead,
      doubt: { candidates: [Number(text), teen], because: "forty and fourteen sound alike" },
    })
  }
  return reading(from, end, text, { shape, lead })
}

function takeDecimal(row: AtomRow, at: number): { digits: string; end: number; isTens: boolean } | null {
  const atom = row.atoms[at]!
  switch (atom.role) {
    case "zero":
    case "softZero":
    case "digit":
      return { digits: String(atom.value), end: atom.to, isTens: false }
    case "figure":
      return /^\d{1,4}$/.test(atom.text) ? { digits: atom.text, end: atom.to, isTens: false } : null
    case "times": {
      const next = row.atoms[at + 1]
      const isDigit = next?.role === "zero" || next?.role === "softZero" || next?.role === "digit"
      return isDigit ? { digits: String(next.value).repeat(atom.value), end: next.to, isTens: false } : null
    }
    case "teen":
      return { digits: String(atom.value), end: atom.to, isTens: true }
    case "ty": {
      const next = isEdgeGap(row.tokens[at]!.after) ? null : row.atoms[at + 1]
      if (next?.role === "digit") return { digits: String(atom.value + next.value), end: next.to, isTens: true }
      return { digits: String(atom.value), end: atom.to, isTens: true }
    }
    default:
      return null
  }
}
