/**
 * The smallest pieces of spoken and written numbers. Sound-alikes become digits only beside a point or before a unit or
 * "hundred"; a torn "fif teen" is put together; everything else is left alone, so that "for the gas" stays "for".
 */
import type { NumberRole } from "./readNumberWords"
import { isEdgeGap, type Token } from "./Token"
import type { WordBook } from "./WordBook"

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

/** One entry per token: the atom that begins there, or null. `words` are the tokens after spelling is settled. */
export function readAtoms(tokens: readonly Token[], words: readonly string[], book: WordBook): (Atom | null)[] {
  const atoms = tokens.map((token, at) =>
    atomOf(token, words[at]!, at, book, ["bs", "en", "iec", "iso"].includes(words[at - 1] ?? "")),
  )
  joinTorn(atoms, tokens, words)
  readPoints(atoms, tokens, words, book)
  readBesidePoint(atoms, tokens, words, book)
  readBeforeUnit(atoms, tokens, words, book)
  return atoms
}

function atomOf(token: Token, word: string, at: number, book: WordBook, isStandard: boolean): Atom | null {
  const place = { from: at, to: at + 1, isDoubtful: false }
  // "BS 1361" is a standard, not a value.
  if (token.isFigure && isStandard) return null
  if (token.isFigure) {
    const fraction = fractions[token.text]
    return fraction === undefined
      ? { role: "figure", value: Number.NaN, text: token.text, ...place }
      : { role: "fraction", value: fraction, text: token.text, ...place }
  }
  return wordAtom(word, place, book)
}

function wordAtom(word: string, place: { from: number; to: number; isDoubtful: boolean }, book: WordBook): Atom | null {
  const known = book.numberWords.get(word) ?? plural(word, book)
  if (known) return { ...known, text: word, ...place }
  const glued =
    /^(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(one|two|three|four|five|six|seven|eight|nine)$/.exec(word)
  if (!glued) return null
  const value = book.numberWords.get(glued[1]!)!.value + book.numberWords.get(glued[2]!)!.value
  return { role: "teen", value, text: word, ...place }
}

/** "thirty fives": sizes are said in the plural too. */
function plural(word: string, book: WordBook) {
  const known = /^(?!ones$|zeros$|noughts$|halves$)\w+s$/.test(word)
    ? book.numberWords.get(word.replace(/(?:(?<=x)e|)s$/, "").replace(/tie$/, "ty"))
    : undefined
  return known && ["digit", "teen", "ty"].includes(known.role) ? known : undefined
}

/** "fif teen", "six ty" and "four teen" are one word each. */
function joinTorn(atoms: (Atom | null)[], tokens: readonly Token[], words: readonly string[]): void {
  for (let at = 0; at + 1 < atoms.length; at += 1) {
    const head = atoms[at]
    const tail = atoms[at + 1]
    if (!head || tail?.role !== "tail" || isEdgeGap(tokens[at]!.after)) continue
    if (words[at + 1] === "tea" || !(head.role === "stub" || (head.role === "digit" && head.value > 2))) continue
    const isTeen = words[at + 1]!.startsWith("teen")
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
    atoms[at] = wordAtom(meaning.meant, { from: at, to: at + 1, isDoubtful: meaning.trust !== "sure" }, book)
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

/** After a digit, "to" and "for" are digits only when no article or name follows them. */
const canFollow = (at: number, words: readonly string[]): boolean =>
  !(["to", "for", "not", "nor"].includes(words[at]!) && /^(the|a|my|that|it|be|this)$/.test(words[at + 1] ?? ""))

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
      atoms[at + 1]?.role === "hundred" || (isUnit(next, book) && !["m", "a", "k", "own", "home"].includes(next))
    // Behind a number it may be its last digit or a small word: "twenty to metres".
    if (isCounted && words[at - 1] !== "a")
      atoms[at] = wordAtom(
        meaning.meant,
        { from: at, to: at + 1, isDoubtful: meaning.trust !== "sure" || !!before },
        book,
      )
  }
}

const isUnit = (word: string, book: WordBook) =>
  book.unitWords.has(word) || book.soundAlikes.unit.get(word)?.trust === "sure"
