/**
 * Whole numbers: "a hundred and five", "twelve hundred", "four fifty" for 450, "one four" for 14. The last two are
 * marked, since only some fields may take them.
 */

import { type AtomRow, reading, takeDigits } from "./AtomRow"
import type { NumberReading } from "./NumberReading"
import type { Atom } from "./readAtoms"
import { isEdgeGap } from "./Token"

interface Piece {
  value: number
  to: number
}

const atomAt = (row: AtomRow, at: number): Atom | null =>
  at === 0 || (at < row.tokens.length && !isEdgeGap(row.tokens[at - 1]!.after)) ? (row.atoms[at] ?? null) : null

/** A whole number that begins at `at`, or null. An article before "hundred" belongs to the phrase, not to the number. */
export function readCardinal(row: AtomRow, at: number): NumberReading | null {
  const first = row.atoms[at]
  if (!first) return null
  const spoken = first.role !== "figure"
  const head =
    readBelowHundred(row, at) ?? (first.role === "hundred" || first.role === "thousand" ? { value: 1, to: at } : null)
  if (!head) return null
  const digits = takeDigits(row, at)
  if (digits.text.length > 1 && spoken) return readDigitRow(row, at, digits)
  const scale = head.to === at ? first : atomAt(row, head.to)
  if (scale?.role === "hundred" || scale?.role === "thousand") {
    const whole = readScaled(row, head)
    return reading(at, whole.to, String(whole.value), { spoken })
  }
  const implied = first.role === "digit" ? readImplied(row, head) : null
  if (implied) return reading(at, implied.to, String(implied.value), { shape: "implied" })
  return reading(at, head.to, String(head.value), { spoken })
}

function readDigitRow(row: AtomRow, at: number, digits: { text: string; end: number }): NumberReading {
  const next = atomAt(row, digits.end)
  const isTorn = next?.role === "hundred" || next?.role === "ty" || next?.role === "teen"
  if (isTorn) return reading(at, at + 1, String(row.atoms[at]!.value), {})
  return reading(at, digits.end, digits.text, { shape: "digits" })
}

function readBelowHundred(row: AtomRow, at: number): Piece | null {
  const atom = row.atoms[at]
  if (atom?.role === "figure") return /^\d{1,4}$/.test(atom.text) ? { value: Number(atom.text), to: at + 1 } : null
  if (atom?.role === "digit" || atom?.role === "teen") return { value: atom.value, to: atom.to }
  if (atom?.role !== "ty") return null
  const unit = atomAt(row, atom.to)
  if (unit?.role === "digit") return { value: atom.value + unit.value, to: unit.to }
  // An engine may write the second half of a number in a figure: "twenty 5".
  if (unit?.role === "figure" && /^[1-9]$/.test(unit.text))
    return { value: atom.value + Number(unit.text), to: unit.to }
  return { value: atom.value, to: atom.to }
}

/** "two hundred and fifty", "one thousand two hundred". */
function readScaled(row: AtomRow, head: Piece): Piece {
  let total = 0
  let current = head
  // A leading "hundred" counts itself, whatever stands before it.
  for (let scale = row.atoms[current.to] ?? null; scale; scale = atomAt(row, current.to)) {
    if (scale.role === "hundred" && current.value < 100) {
      const rest = readRest(row, scale.to)
      current = { value: current.value * 100 + (rest?.value ?? 0), to: rest?.to ?? scale.to }
    } else if (scale.role === "thousand" && total === 0) {
      total = current.value * 1000
      const rest = readRest(row, scale.to)
      if (!rest) return { value: total, to: scale.to }
      current = rest
    } else break
  }
  return { value: total + current.value, to: current.to }
}

function readRest(row: AtomRow, at: number): Piece | null {
  const hasAnd = row.words[at] === "and" && !isEdgeGap(row.tokens[at - 1]!.after)
  const start = hasAnd ? at + 1 : at
  const atom = atomAt(row, start)
  if (!atom || atom.role === "figure" || (hasAnd && isEdgeGap(row.tokens[at]!.after))) return null
  const piece = readBelowHundred(row, start)
  // "a hundred and two hundred" is two numbers.
  if (hasAnd && piece && atomAt(row, piece.to)?.role === "hundred") return null
  return piece
}

/** "four fifty", "three twenty five": hundreds left unsaid. */
function readImplied(row: AtomRow, head: Piece): Piece | null {
  const next = atomAt(row, head.to)
  if (next?.role !== "ty" && next?.role !== "teen") return null
  const rest = readBelowHundred(row, head.to)
  if (!rest || rest.value < 10) return null
  const after = atomAt(row, rest.to)
  return after && ["hundred", "ty", "teen", "digit"].includes(after.role)
    ? null
    : { value: head.value * 100 + rest.value, to: rest.to }
}
