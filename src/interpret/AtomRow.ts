/** A row of number atoms with the tokens they came from, and what every reader of it needs. */
import type { NumberReading } from "./NumberReading"
import type { Atom } from "./readAtoms"
import { isEdgeGap, type Token } from "./Token"

export interface AtomRow {
  atoms: readonly (Atom | null)[]
  tokens: readonly Token[]
  words: readonly string[]
}

export const reading = (from: number, to: number, text: string, more: Partial<NumberReading>): NumberReading => ({
  from,
  to,
  text,
  value: Number(text),
  shape: "whole",
  lead: null,
  places: text.split(".")[1]?.length ?? 0,
  spoken: true,
  hasThousandsComma: false,
  isSplit: false,
  doubt: null,
  ...more,
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
