/** A row of number atoms with the tokens they came from, and what every reader of it needs. */
import type { NumberReading } from "./NumberReading"
import type { Atom } from "./readAtoms"
import { isEdgeGap, type Token } from "./Token"

export interface AtomRow {
  atoms: readonly (Atom | null)[]
  tokens: readonly Token[]
  words: readonly string[]
}

/** Digits behind the point. */
function placesOf(text: string): number {
  const point = text.indexOf(".")
  return point === -1 ? 0 : text.length - point - 1
}

export const reading = (from: number, to: number, text: string, more: Partial<NumberReading>): NumberReading => ({
  from,
  to,
  text,
  value: more.value ?? Number(text),
  shape: more.shape ?? "whole",
  lead: more.lead ?? null,
  places: more.places ?? placesOf(text),
  spoken: more.spoken ?? true,
  hasThousandsComma: more.hasThousandsComma ?? false,
  isSplit: more.isSplit ?? false,
  doubt: more.doubt ?? null,
})

/** Whether the token at this place follows the one before without an edge. */
export const touches = (row: AtomRow, at: number) =>
  at > 0 && at < row.tokens.length && !isEdgeGap(row.tokens[at - 1]!.after)

/** Single digits in a row, noughts among them. */
export function takeDigits(row: AtomRow, at: number): { text: string; end: number } {
  let text = ""
  let end = at
  for (let atom = row.atoms[end]; atom && (end === at || touches(row, end)); atom = row.atoms[end]) {
    if (atom.role === "zero" || atom.role === "softZero" || atom.role === "digit") text += atom.value
    else if (atom.role === "figure" && /^\d$/.test(atom.text)) text += atom.text
    else break
    end = atom.to
  }
  return { text, end }
}
