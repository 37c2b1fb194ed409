/**
 * Cuts engine text into tokens that know where they came from. Figures stay as written ("0..05", "16:14"), since their
 * very form says how far they can be trusted. Fraction characters are kept whole: NFKC would turn 1½ into 11/2. The two
 * ohm signs become one word, and m and M before them are told apart before anything is lowered.
 */
import { type Gap, isEdgeGap, type Token } from "./Token"

const figure = /[oO](?=[.,]\d)[.,oO\d]*\d|(?:(?<![\d.])\.{1,2})?\d(?:[.,:/]{0,2}(?:\d|[oO]+(?![A-Za-z])))*/y
const initials = /(?:[A-Za-z]\.){2,}[A-Za-z]?(?![A-Za-z])/y
const word = /\p{L}[\p{L}\p{M}]*(?:['’`]\p{L}+)*/uy
const squareMark = /(?:\^2|²)/y
const ohmSign = /[\u2126\u03a9\u03c9]/y
const fraction = /[½¼¾⅓⅔⅛⅜⅝⅞]/y
const symbols: Readonly<Record<string, string>> = {
  ">": ">",
  "<": "<",
  "≥": ">=",
  "≤": "<=",
  "%": "percent",
  "£": "pounds",
  $: "pounds",
  "€": "pounds",
  "°": "degrees",
  "@": "at",
  "&": "and",
}
const gaps: Readonly<Record<string, Gap>> = {
  ",": "comma",
  ";": "comma",
  ":": "colon",
  ".": "stop",
  "!": "stop",
  "…": "stop",
  "\n": "stop",
  "?": "question",
  "-": "hyphen",
  "‐": "hyphen",
  "‑": "hyphen",
  "–": "dash",
  "—": "dash",
}
const strength: Readonly<Record<Gap, number>> = {
  none: 0,
  space: 1,
  hyphen: 2,
  comma: 3,
  dash: 4,
  colon: 5,
  stop: 6,
  question: 7,
}
/** Engines put what is not speech into brackets. */
const notSpeech = /\[[^\]\n]{0,80}\]|\([^)\n]{0,80}\)|\*[^*\n]{0,80}\*|<[a-z|_/]{1,40}>|[♪♫]/giy

/** All tokens, in order. Any text is taken; what is neither word nor figure only parts the tokens. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = []
  let at = 0
  let last: Token | null = null
  let hasLetters = false
  while (at < text.length) {
    const isBlank = isSpace(text, at)
    const found: Piece | null = isBlank
      ? null
      : (plainAt(text, at) ?? tokenAt(text, at) ?? minusAt(text, at) ?? pointAt(text, at, last))
    if (found) {
      last = { text: found.text, isFigure: found.isFigure, from: at, to: found.end, after: "none" }
      hasLetters ||= found.text.length === 1
      tokens.push(last)
      at = found.end
      continue
    }
    const skipped = isBlank ? null : endOf(notSpeech, text, at)
    const gap: Gap = isBlank || skipped ? "space" : gapOf(text, at)
    if (last && strength[gap] > strength[last.after]) last.after = gap
    at = skipped ?? at + 1
  }
  return hasLetters ? joinSpelled(tokens) : tokens
}

interface Piece {
  text: string
  end: number
  isFigure: boolean
}

const isSpace = (text: string, at: number) => text.charCodeAt(at) === 32
const isLow = (code: number) => code >= 97 && code <= 122
const isCapital = (code: number) => code >= 65 && code <= 90
const isDigit = (code: number) => code >= 48 && code <= 57

/** Most of what is heard: a word or whole figures between spaces, commas and stops, without a second look. */
function plainAt(text: string, at: number): Piece | null {
  const first = text.charCodeAt(at)
  const isFigure = isDigit(first)
  if (!isFigure && !isLow(first) && !isCapital(first)) return null
  const isKind = isFigure ? isDigit : isLow
  let end = at + 1
  while (isKind(text.charCodeAt(end)) || (!isFigure && isInnerApostrophe(text, end))) end += 1
  if (isFigure && brokenEnd(text, end) !== null) return null
  if (!isEndOf(text, end) && (isFigure || end - at === 1 || !isPauseMark(text, end))) return null
  const found = isCapital(first) ? text.slice(at, end).toLowerCase() : text.slice(at, end)
  return mayHidePrefix(found) ? null : { text: found, end, isFigure }
}

/**
 * "10 . 5": a mark by itself between two figures may be a point or the end of a sentence, so both are one broken figure.
 * A nought ends no sentence: there it is a point. Gives where the second figure ends.
 */
function brokenEnd(text: string, end: number): number | null {
  const mark = text[end + 1]
  if (!isSpace(text, end) || !isSpace(text, end + 2) || (mark !== "." && mark !== ":")) return null
  if (mark === "." && /(^|\D)0$/.test(text.slice(Math.max(0, end - 2), end))) return null
  let after = end + 3
  while (isDigit(text.charCodeAt(after))) after += 1
  return after > end + 3 ? after : null
}

/** The one of "it's". */
const isInnerApostrophe = (text: string, at: number) => text.charCodeAt(at) === 39 && isLow(text.charCodeAt(at + 1))
const isEndOf = (text: string, at: number) => at === text.length || isSpace(text, at)
/** A comma, a full stop or a hyphen that ends the word before it; one before a figure may belong to that. */
const isPauseMark = (text: string, at: number) =>
  (text.charCodeAt(at) === 45 && isLow(text.charCodeAt(at + 1))) ||
  (text.charCodeAt(at) === 44 && !isDigit(text.charCodeAt(at + 1))) ||
  (text.charCodeAt(at) === 46 && isEndOf(text, at + 1))

/** "kohms" and "mohm" are told apart by their capitals. */
const mayHidePrefix = (found: string): boolean => /^[km]ohms?$/.test(found)

function tokenAt(text: string, at: number): Piece | null {
  const figureEnd = endOf(figure, text, at)
  const broken = figureEnd === null ? null : brokenEnd(text, figureEnd)
  if (broken !== null) return { text: text.slice(at, broken).replace(/ [.:] /, ":"), end: broken, isFigure: true }
  if (figureEnd) return { text: text.slice(at, figureEnd).replace(/[oO]/g, "0"), end: figureEnd, isFigure: true }
  const fractionEnd = endOf(fraction, text, at)
  if (fractionEnd) return { text: text.slice(at, fractionEnd), end: fractionEnd, isFigure: true }
  const ohmEnd = endOf(ohmSign, text, at)
  if (ohmEnd) return { text: "ohms", end: ohmEnd, isFigure: false }
  const initialsEnd = endOf(initials, text, at)
  if (initialsEnd)
    return { text: text.slice(at, initialsEnd).replaceAll(".", "").toLowerCase(), end: initialsEnd, isFigure: false }
  const wordEnd = endOf(word, text, at)
  if (wordEnd) return wordFrom(text, at, wordEnd)
  const symbol = symbols[text[at]!]
  return symbol ? { text: symbol, end: at + 1, isFigure: false } : null
}

/** Units whose capitals matter, and squares glued to a unit, are settled here; all else is lowered. */
function wordFrom(text: string, at: number, end: number): Piece {
  const written = text.slice(at, end)
  const ohmEnd = endOf(ohmSign, text, end - 1)
  if (ohmEnd === end && written.length > 1) return { text: prefixed(written.slice(0, -1)), end, isFigure: false }
  if (/^[mMkK]ohms?$/i.test(written)) return { text: prefixed(written[0]!), end, isFigure: false }
  const squareEnd = endOf(squareMark, text, end)
  if (squareEnd && /^m{1,2}$/i.test(written)) return { text: "mm2", end: squareEnd, isFigure: false }
  if (/^mm$/i.test(written) && /^2(?!\d)/.test(text.slice(end))) return { text: "mm2", end: end + 1, isFigure: false }
  return { text: written.replace(/[’`]/g, "'").normalize("NFKC").toLowerCase(), end, isFigure: false }
}

/** "m" is milli; "M" may be mega or a milli that an engine capitalised. */
function prefixed(prefix: string): string {
  if (prefix === "m") return "milliohms"
  if (prefix === "M") return "megohms?"
  return prefix.toLowerCase() === "k" ? "kilohms" : `${prefix.toLowerCase()}ohms`
}

/** A dash that leans on a figure from the left is a sign: "-0.05". */
const minusAt = (text: string, at: number): Piece | null =>
  /[-−–]/.test(text[at]!) && /[\d.]/.test(text[at + 1] ?? "") && (at === 0 || /[\s,;:]/.test(text[at - 1]!))
    ? { text: "minus", end: at + 1, isFigure: false }
    : null

/** "0 . 0 5": behind a nought, a stop that stands by itself before a digit is its point. */
const pointAt = (text: string, at: number, last: Token | null): Piece | null =>
  text[at] === "." && last?.text === "0" && last.to === at - 1 && /^ \d/.test(text.slice(at + 1, at + 3))
    ? { text: "point", end: at + 1, isFigure: false }
    : null

function gapOf(text: string, at: number): Gap {
  const mark = gaps[text[at]!]
  if (mark === undefined) return "space"
  // A hyphen with spaces around it parts two values; one inside a word only joins its halves.
  if (mark === "hyphen" && /\s/.test(text[at - 1] ?? " ") && /\s/.test(text[at + 1] ?? " ")) return "dash"
  return mark
}

function endOf(shape: RegExp, text: string, at: number): number | null {
  shape.lastIndex = at
  const match = shape.exec(text)
  return match && match[0] !== "" ? at + match[0].length : null
}

/** Letters spelled out with stops or commas between them ("T. N. S.") belong together. */
function joinSpelled(tokens: Token[]): Token[] {
  for (const [at, token] of tokens.entries()) {
    const next = tokens[at + 1]
    if (next && isEdgeGap(token.after) && isLetter(token) && isLetter(next)) token.after = "space"
  }
  return tokens
}

const isLetter = (token: Token) => !token.isFigure && /^[b-hj-z]$/.test(token.text)
