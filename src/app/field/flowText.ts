/**
 * Lays words out in lines of a given width, which SVG does not do. Widths are estimated from the number of letters, on
 * the wide side, so that a name never runs under what stands beside it.
 */

/** Sizes in units of a sixteenth of the page's text size. */
export const textSizes = { name: 19, value: 19, small: 16, big: 30 } as const
export type TextSize = keyof typeof textSizes

export interface Token<Kind> {
  text: string
  size: TextSize
  /** Room for a shape before the text. */
  lead?: number
  kind: Kind
}

export interface Placed<Kind> extends Token<Kind> {
  x: number
  /** Of the text's foot, below the top of the block. */
  y: number
}

const gap = 16

/** Widths of letters as shares of the text size, in a bold wide face; narrower faces only leave more room. */
const widthOfLetter = (letter: string): number => {
  if ("mwMWΩ%".includes(letter)) return 1.04
  if ("iljtfr.,:;'’|!()1 ".includes(letter)) return letter === " " ? 0.35 : letter === "1" ? 0.7 : 0.46
  if (/[0-9²³+<>≤=]/u.test(letter)) return 0.72
  return /\p{Lu}/u.test(letter) ? 0.8 : 0.7
}

/** Estimated width of a text. */
export const widthOf = (text: string, size: TextSize): number =>
  [...text].reduce((sum, letter) => sum + widthOfLetter(letter), 0) * textSizes[size]

/** Cuts a word that alone is wider than the room. */
const cutWord = (word: string, size: TextSize, room: number): string[] => {
  const pieces = [""]
  for (const letter of word) {
    const last = pieces.at(-1)!
    if (last !== "" && widthOf(last + letter, size) > room) pieces.push(letter)
    else pieces[pieces.length - 1] = last + letter
  }
  return pieces
}

/** Cuts a text into pieces no wider than `room`, at spaces where it can. */
export const cutText = (text: string, size: TextSize, room: number): string[] => {
  const lines: string[] = []
  for (const word of text.split(" ").flatMap((one) => cutWord(one, size, room))) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : null
    if (longer !== null && widthOf(longer, size) <= room) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}

/** Cuts every token to pieces that fit; only the first piece keeps the room for a shape. */
const fitTokens = <Kind>(tokens: readonly Token<Kind>[], room: number) =>
  tokens.flatMap((token) =>
    cutText(token.text, token.size, room - (token.lead ?? 0)).map((text, index) => ({
      token,
      text,
      first: index === 0,
    })),
  )

/** Places tokens one after another on common feet, in as many lines as they need. */
export const flowText = <Kind>(
  tokens: readonly Token<Kind>[],
  room: number,
): { placed: Placed<Kind>[]; height: number } => {
  const placed: Placed<Kind>[] = []
  let line: Placed<Kind>[] = []
  let x = 0
  let top = 0
  const endLine = () => {
    const tallest = Math.max(0, ...line.map((one) => textSizes[one.size]))
    placed.push(...line.map((one) => ({ ...one, y: top + tallest })))
    top += tallest * 1.35
    line = []
    x = 0
  }
  for (const { token, text, first } of fitTokens(tokens, room)) {
    const lead = token.lead ?? 0
    const wide = lead + widthOf(text, token.size)
    if (line.length > 0 && (!first || x + wide > room)) endLine()
    line.push({ ...token, text, lead: first ? lead : 0, x: first ? x : x + lead, y: 0 })
    x += wide + gap
  }
  endLine()
  return { placed, height: top }
}
