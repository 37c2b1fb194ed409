/**
 * Text broken into lines that fit a width. A word that is wider than the line is broken between letters, never within a
 * letter and its accents. The spaces at a break stay at the line's end, where they are not seen but keep words apart for
 * whoever reads the lines one after the other: together the lines are the text, with a space for each line break in it.
 */

/** Words, each with the spaces after it. */
const piecesOf = (line: string): string[] => line.match(/ *[^ ]+ *| +/g) ?? [""]

const letters = /\P{M}\p{M}*|\p{M}+/gu

/** `measure` gives a text's width in the same unit as `width`. */
export const wrapText = (text: string, width: number, measure: (text: string) => number): string[] => {
  const lines: string[] = []
  let line = ""
  let used = 0
  const turn = () => {
    lines.push(line)
    line = ""
    used = 0
  }
  const addLetters = (word: string) => {
    for (const letter of word.match(letters) ?? []) {
      const wide = measure(letter)
      if (line !== "" && used + wide > width && letter !== " ") turn()
      line += letter
      used += wide
    }
  }
  const addPiece = (piece: string) => {
    const bare = measure(piece.trimEnd())
    if (line !== "" && used + bare > width) turn()
    if (bare > width) addLetters(piece)
    else {
      line += piece
      used += piece.endsWith(" ") ? measure(piece) : bare
    }
  }
  const paragraphs = text.split("\n")
  for (const [at, paragraph] of paragraphs.entries()) {
    for (const piece of piecesOf(paragraph)) addPiece(piece)
    if (at < paragraphs.length - 1) line += " "
    turn()
  }
  return lines
}
