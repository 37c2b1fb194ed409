/**
 * A value that jobs are looked for by: "bonds under 10", "gas reading over 0.05", "16 square on water", "bonds without a
 * reading". A number alone could be anything, so what it is of has to follow from a word, a unit, or a size that is sold.
 */
import type { Item } from "../facts/Item"
import { sizesMm2 } from "../facts/Quantity"
import type { Condition, PartField, Sign, Whose } from "./Condition"
import type { Cursor } from "./Cursor"
import { numberWords } from "./numberWords"
import { takeItem } from "./takeItem"

export type ValueReading = { condition: Condition } | { because: string }

const fieldWords: readonly (readonly [PartField, string])[] = [
  ["reading", "readings?|reads?|resistances?|ohms reading"],
  ["length", "lengths?|runs?|long"],
  ["clamp", "clamps? distances?|clamps?|distances?"],
  ["size", "sizes?|sized|csa|conductors?"],
]
const signWords: readonly (readonly [Sign, string])[] = [
  ["<=", "no more than|not more than|at most|up to"],
  [">=", "no less than|not less than|at least"],
  ["<", "(?:less|smaller|lower|shorter|nearer|thinner) than|under|below"],
  [">", "(?:more|bigger|greater|larger|higher|longer|further|thicker) than|over|above"],
  ["=", "exactly|equal to"],
]
const unitWords: readonly (readonly [PartField | "mm", string])[] = [
  ["size", "mm2|mm²|sq ?mm|square(?: mil| mm| millimetres?)?|sq"],
  ["reading", "ohms?|Ω|ω|r"],
  ["mm", "mm|mil|millimetres?"],
  ["length", "m|metres?|meters?"],
]
/** Longer ones first: "twenty five" is no twenty. */
const anyNumberWord = Object.keys(numberWords)
  .sort((a, b) => b.length - a.length)
  .join("|")
const between =
  "(?:(?:with|that|which|who|are|is|a|an|of|at(?! least| most)|on|for|the|in|has|have|having|than|any|some)\\s+)*"

const takeOne = <T>(cursor: Cursor, words: readonly (readonly [T, string])[]): T | null => {
  for (const [meaning, pattern] of words) if (cursor.take(pattern)) return meaning
  return null
}

const takeSign = (cursor: Cursor): Sign | null => {
  const symbol = /^(<=|>=|<|>|=|≤|≥)\s*/.exec(cursor.text.slice(cursor.at))
  if (!symbol) return takeOne(cursor, signWords)
  cursor.at += symbol[0].length
  return ({ "≤": "<=", "≥": ">=" } as Record<string, Sign>)[symbol[1]!] ?? (symbol[1] as Sign)
}

const takeNumber = (cursor: Cursor): number | null => {
  const glued = /^(\d+(?:\.\d+)?|\.\d+)(?=(?:mm2|mm²|mm|m|Ω|ω|ohms?)?(?![\p{L}\p{N}.]))\s*/u.exec(
    cursor.text.slice(cursor.at),
  )
  if (glued) {
    cursor.at += glued[0].length
    return Number(glued[1])
  }
  const word = cursor.take(anyNumberWord)
  return word ? numberWords[word[0].trim()]! : null
}

const takeWhose = (cursor: Cursor, items: readonly Item[]): Whose | null =>
  cursor.attempt(() => {
    skip(cursor)
    const item = takeItem(cursor, items)
    if (item) return { item }
    if (cursor.take("bonds?|bonding")) return { any: "bond" as const }
    return cursor.take("parts?|anything") ? { any: "part" as const } : null
  })

/** "… bonds on water": a part that is named behind says more than "bonds" did. */
const takeOwner = (cursor: Cursor, items: readonly Item[]): Whose | null =>
  cursor.attempt(() => {
    cursor.take("bonds?|bonding")
    const item = cursor.take("(?:on|of|for|at)(?: the)?") && takeItem(cursor, items)
    return item ? { item } : null
  })

const skip = (cursor: Cursor): true => {
  const found = new RegExp(between, "y")
  found.lastIndex = cursor.at
  cursor.at += found.exec(cursor.text)?.[0].length ?? 0
  return true
}

const takeField = (cursor: Cursor): PartField | null =>
  cursor.attempt(() => {
    skip(cursor)
    return takeOne(cursor, fieldWords)
  })

/** What a number is of, where no word said it. */
const fieldOf = (value: number, unit: PartField | "mm" | null): PartField | null => {
  const isSold = (sizesMm2 as readonly number[]).includes(value)
  if (unit === "mm") return isSold ? "size" : "clamp"
  if (unit) return unit
  if (isSold) return "size"
  return value < 1 ? "reading" : null
}

const ofWhat = "say of what: size, reading, length or clamp"

/** Reads a value at the cursor; null where there is none. */
export const readValue = (cursor: Cursor, items: readonly Item[]): ValueReading | null =>
  cursor.attempt(() => {
    const named = takeWhose(cursor, items)
    const said = takeField(cursor)
    const owner = named ?? (said ? takeWhose(cursor, items) : null)
    skip(cursor)
    if (cursor.take("over range|open circuit"))
      return { condition: { kind: "overRange", whose: owner ?? { any: "part" } } }
    if (cursor.take("no|without(?: an?| any)?|missing(?: an?)?|lacking(?: an?)?")) {
      const field = said ? null : takeField(cursor)
      return field && { condition: { kind: "recorded", whose: owner ?? { any: "bond" }, field, not: true } }
    }
    const number = cursor.attempt(() => readNumber(cursor, items, owner, said))
    if (number || !said || !(owner || said === "reading")) return number
    return { condition: { kind: "recorded", whose: owner ?? { any: "part" }, field: said, not: false } }
  })

const readNumber = (
  cursor: Cursor,
  items: readonly Item[],
  owner: Whose | null,
  said: PartField | null,
): ValueReading | null => {
  const sign = takeSign(cursor)
  const value = takeNumber(cursor)
  if (value === null) return null
  const unit = takeOne(cursor, unitWords)
  const named = owner ?? takeWhose(cursor, items)
  const whose = named && "any" in named ? (takeOwner(cursor, items) ?? named) : named
  const field = said ?? takeField(cursor) ?? (whose || unit ? fieldOf(value, unit) : null)
  // "14" alone may be a house, and "gas 3" nobody knows what.
  if (!sign && !unit && !said && !(whose && field)) return null
  if (!field) return { because: ofWhat }
  if (unit && !fits(field, unit)) return { because: "the unit is not one of what was named" }
  const any = field === "reading" || field === "length" ? "part" : "bond"
  return { condition: { kind: "value", whose: whose ?? { any }, field, sign: sign ?? "=", value } }
}

const fits = (field: PartField, unit: PartField | "mm") =>
  unit === "mm" ? field === "size" || field === "clamp" : unit === field || (unit === "length" && field === "clamp")
