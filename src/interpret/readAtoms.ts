/**
 * The smallest pieces of spoken and written numbers. Sound-alikes become digits only beside a point or before a unit or
 * "hundred"; a torn "fif teen" is put together; everything else is left alone, so that "for the gas" stays "for".
 */

import { numberOf, type WordEntry } from "./Lexicon"
import type { NumberRole } from "./readNumberWords"
import { isEdgeGap, type Token } from "./Token"
import type { Meaning, WordBook } from "./WordBook"

export interface Atom {
  role: NumberRole | "figure" | "fraction"
  value: number
  /** As written, for figures and fraction characters. */
  text: string
  /** Tokens it takes. */
  from: number
  to: number
  /** Whether it may not be written down without asking. */
  isDoubtful: boolean
}

const fractions: Readonly<Record<string, number>> = {
  "½": 0.5,
  "¼": 0.25,
  "¾": 0.75,
  "⅛": 0.125,
  "⅜": 0.375,
  "⅝": 0.625,
  "⅞": 0.875,
}

/** The words of an utterance, with what is known of each. */
export interface WordsRead {
  tokens: readonly Token[]
  /** The tokens after spelling is settled. */
  words: readonly string[]
  entries: readonly WordEntry[]
}

/** One entry per token: the atom that begins there, or null. Null when no token can be one. */
export function readAtoms({ tokens, words, entries }: WordsRead, book: WordBook): (Atom | null)[] | null {
  let mayCount = false
  let hasPoint = false
  let isAny = false
  const atoms = entries.map((entry, at) => {
    mayCount ||= entry.mayCount
    hasPoint ||= entry.mayBePoint || entry.number?.role === "point"
    const atom = tokens[at]!.isFigure ? figureAtom(words, at) : entry.number && atomOf(entry.number, entry.word, at)
    isAny ||= atom !== null
    return atom
  })
  if (!isAny && !mayCount) return null
  joinTorn(atoms, tokens, words, book)
  if (hasPoint) {
    readPoints(atoms, tokens, words, book)
    readBesidePoint(atoms, tokens, words, book)
  }
  if (mayCount) readBeforeUnit(atoms, tokens, words, book)
  return atoms
}

function figureAtom(words: readonly string[], at: number): Atom | null {
  // "BS 1361" is a standard, not a value.
  if (at > 0 && /^(bs|en|iec|iso)$/.test(words[at - 1]!)) return null
  const text = words[at]!
  const fraction = fractions[text]
  return {
    role: fraction === undefined ? "figure" : "fraction",
    value: fraction ?? Number.NaN,
    text,
    from: at,
    to: at + 1,
    isDoubtful: false,
  }
}

const atomOf = ({ role, value }: { role: NumberRole; value: number }, text: string, at: number): Atom => ({
  role,
  value,
  text,
  from: at,
  to: at + 1,
  isDoubtful: false,
})

/** A sound-alike as the number word that it stands for. */
function heardAtom(meaning: Meaning, at: number, book: WordBook, isDoubtful: boolean): Atom | null {
  const number = numberOf(meaning.meant, book)
  return number && { ...atomOf(number, meaning.meant, at), isDoubtful }
}

/** "for teen", "sick steen": what is written for a digit, before an ending that is whole. */
function alikeAtom(word: string, at: number, book: WordBook): Atom | null {
  const meaning = book.soundAlikes.beforeUnit.get(word)
  return meaning ? heardAtom(meaning, at, book, false) : null
}

/** "fif teen", "six ty" and "four teen" are one word each. */
function joinTorn(atoms: (Atom | null)[], tokens: readonly Token[], words: readonly string[], book: WordBook): void {
  for (let at = 0; at + 1 < atoms.length; at += 1) {
    const tail = atoms[at + 1]
    if (tail?.role !== "tail" || isEdgeGap(tokens[at]!.after)) continue
    const isTeen = /^s?teen/.test(words[at + 1]!)
    const head = atoms[at] ?? (isTeen ? alikeAtom(words[at]!, at, book) : null)
    if (!head) continue
    if (words[at + 1] === "tea" || !(head.role === "stub" || (head.role === "digit" && head.value > 2))) continue
    atoms[at] = {
      ...head,
      role: isTeen ? "teen" : "ty",
      value: isTeen ? head.value + 10 : head.value * 10,
      to: at + 2,
    }
    atoms[at + 1] = null
  }
}

/** "0 pint 0 5": a sound-alike of the point counts between two numbers only. */
function readPoints(atoms: (Atom | null)[], tokens: readonly Token[], words: readonly string[], book: WordBook): void {
  const isDigit = (at: number) => atoms[at] !== null || book.soundAlikes.besidePoint.has(words[at] ?? "")
  for (let at = 1; at + 1 < atoms.length; at += 1) {
    if (
      atoms[at] ||
      !book.soundAlikes.point.has(words[at]!) ||
      isEdgeGap(tokens[at]!.after) ||
      isEdgeGap(tokens[at - 1]!.after)
    )
      continue
    if (atoms[at - 1] && isDigit(at + 1))
      atoms[at] = { role: "point", value: 0, text: "point", from: at, to: at + 1, isDoubtful: false }
  }
}

function readBesidePoint(
  atoms: (Atom | null)[],
  tokens: readonly Token[],
  words: readonly string[],
  book: WordBook,
): void {
  const fill = (at: number): boolean => {
    if (atoms[at]) return true
    const meaning = book.soundAlikes.besidePoint.get(words[at] ?? "")
    if (!meaning) return false
    atoms[at] = heardAtom(meaning, at, book, meaning.trust !== "sure")
    return atoms[at] !== null
  }
  for (let at = 0; at < atoms.length; at += 1) {
    if (atoms[at]?.role !== "point") continue
    // "to point five" is a distance from nowhere, not 2.5: a preposition before the point stays one.
    if (at > 0 && !isEdgeGap(tokens[at - 1]!.after) && !["to", "too", "for", "free"].includes(words[at - 1]!))
      fill(at - 1)
    for (
      let next = at + 1;
      next < atoms.length && !isEdgeGap(tokens[next - 1]!.after) && canFollow(next, words);
      next += 1
    )
      if (!fill(next)) break
  }
}

/**
 * After a digit, "to" and "for" are digits only when no article or name follows them, and a "now" that ends the sentence
 * behind two digits is one of time.
 */
const canFollow = (at: number, words: readonly string[]): boolean =>
  !(words[at] === "now" && at === words.length - 1 && !isPoint.test(words[at - 2] ?? "point")) &&
  !(["to", "for", "not", "nor"].includes(words[at]!) && beforeName.test(words[at + 1] ?? ""))

/** "nought point nought four for gas": before an article or a part's name they lead on to what the number is of. */
const beforeName =
  /^(the|a|my|that|it|be|this|both|each|all|gas|water|cold|oil|heating|central|steel|steelwork|structural|lightning|main|earth|earthing|ownpart\w)$/

function readBeforeUnit(
  atoms: (Atom | null)[],
  tokens: readonly Token[],
  words: readonly string[],
  book: WordBook,
): void {
  for (let at = atoms.length - 2; at >= 0; at -= 1) {
    const meaning = book.soundAlikes.beforeUnit.get(words[at]!)
    if (atoms[at] || !meaning || isEdgeGap(tokens[at]!.after)) continue
    const next = words[at + 1]!
    const before = at > 0 && !isEdgeGap(tokens[at - 1]!.after) ? atoms[at - 1] : null
    const isCounted =
      atoms[at + 1]?.role === "hundred" ||
      (next === "and" && words[at + 2] === "a" && atoms[at + 3]?.role === "half") ||
      (isUnit(next, book) && !["m", "a", "k", "own", "home"].includes(next)) ||
      isRestOfHundred(atoms, words, at)
    // Behind a number it may be its last digit or a small word: "twenty to metres".
    // "clamp to meter": of one meter there are not two.
    const isPlace = /^(to|too|tae)$/.test(words[at]!) && /^met(er|re)$/.test(next)
    if (isCounted && !isPlace && words[at - 1] !== "a")
      atoms[at] = heardAtom(meaning, at, book, meaning.trust !== "sure" || !!before)
  }
}

/** "won hundred and ate off the meter": behind a hundred and before a place only a number can stand. */
const isRestOfHundred = (atoms: readonly (Atom | null)[], words: readonly string[], at: number): boolean =>
  words[at - 1] === "and" &&
  atoms[at - 2]?.role === "hundred" &&
  !/^(to|too|for|free|tae)$/.test(words[at]!) &&
  /^(off|from|past|above|below)$/.test(words[at + 1]!)

const isPoint = /^(point|\d*\.)$/
const isUnit = (word: string, book: WordBook) =>
  book.unitWords.has(word) || book.soundAlikes.unit.get(word)?.trust === "sure"
