/**
 * A word made of several: by an engine that dropped the spaces, "tensquare", "pointnoughtfive", or by the tongue,
 * "elevenish". It is taken apart only where nothing of it is left over, and only into numbers, units, the names of parts
 * and "ish": letters that may be anything else stay a word nobody knows.
 */
import { knownServices } from "../facts/Item"
import type { Token } from "./Token"
import type { WordBook } from "./WordBook"

/** Shorter ones are words of their own ("often", "someone") sooner than two. */
const leastLetters = 6
const roles = new Set(["zero", "softZero", "digit", "teen", "ty", "hundred", "thousand", "point", "times"])
const partNames: ReadonlySet<string> = new Set(knownServices.filter((item) => !item.includes("_")))

const isNumber = (word: string, book: WordBook): boolean => {
  const known = book.numberWords.get(word)
  return known !== undefined && word.length > 1 && roles.has(known.role)
}

/** The words it is made of, or null when it is one word. */
export function gluedPieces(word: string, book: WordBook): string[] | null {
  if (word.length < leastLetters || !/^[a-z]+$/.test(word)) return null
  const isPiece = (one: string) =>
    isNumber(one, book) || (one.length > 2 && book.unitWords.has(one)) || partNames.has(one) || one === "ish"
  const rounded = word.endsWith("ish") ? `${word.slice(0, -3)}e` : ""
  if (isNumber(rounded, book)) return [rounded, "ish"]
  const split = (rest: string): string[] | null => {
    // The longest piece first: "sixteen" and not "six".
    for (let end = rest.length; end > 1; end -= 1) {
      const piece = rest.slice(0, end)
      const isAlike = book.soundAlikes.beforeUnit.get(piece)?.trust === "sure" && rest.startsWith("hundred", end)
      const behind = isPiece(piece) || isAlike ? (end === rest.length ? [] : split(rest.slice(end))) : null
      if (behind) return [piece, ...behind]
    }
    return null
  }
  const pieces = split(word)
  const holdsNumber = pieces?.some((one) => one !== "point" && isNumber(one, book))
  return pieces && pieces.length > 1 && holdsNumber ? pieces : null
}

/** The token as a row of tokens, one for each piece. */
export const splitToken = (token: Token, pieces: readonly string[]): Token[] => {
  let from = token.from
  return pieces.map((text, at) => {
    const to = from + text.length
    const after = at === pieces.length - 1 ? token.after : "space"
    const piece: Token = { text, isFigure: false, from, to, after }
    from = to
    return piece
  })
}
