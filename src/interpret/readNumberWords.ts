/** Reads the table of number words: what each word does inside a spoken number. */
import { readLines } from "./readLines"

export const numberRoles = [
  "zero",
  "softZero",
  "digit",
  "teen",
  "ty",
  "hundred",
  "thousand",
  "point",
  "times",
  "half",
  "quarter",
  "stub",
  "tail",
] as const
export type NumberRole = (typeof numberRoles)[number]

/** Lines of: word, role, value; parted by tabs. Throws on a line it does not know. */
export function readNumberWords(text: string): Map<string, { role: NumberRole; value: number }> {
  return new Map(
    readLines(text).map((line) => {
      const [word, role, value] = line.split("\t")
      const known = numberRoles.find((one) => one === role)
      if (!word || !known || Number.isNaN(Number(value))) throw new Error(`numberWords.tsv: cannot read "${line}"`)
      return [word, { role: known, value: Number(value) }] as const
    }),
  )
}
