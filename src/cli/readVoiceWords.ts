/**
 * Reads the list of what the fallback voice can say. A line is a word or a whole sentence, with "= spelling" where the
 * synthesiser would say it wrong; the sign "=" itself is written "= = equals".
 */
import { splitWords } from "../speech/planClips"

export interface VoiceWord {
  /** The name of its clip: words in lower case and pauses, one blank between them. */
  name: string
  /** What the synthesiser is given to say. */
  spoken: string
}

/** In the order of the file, each name once. Throws on a name that is there twice. */
export const readVoiceWords = (text: string): VoiceWord[] => {
  const words = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "" && !line.startsWith("#"))
    .map(readLine)
  const twice = words.find((word, at) => words.findIndex((other) => other.name === word.name) < at)
  if (twice) throw new Error(`The voice has "${twice.name}" twice`)
  return words
}

const readLine = (line: string): VoiceWord => {
  const cut = line.indexOf(" = ")
  const said = cut < 0 ? line : line.slice(0, cut)
  const name = said.startsWith("letter:") ? said : splitWords(said).join(" ")
  return { name, spoken: cut < 0 ? said : line.slice(cut + 3) }
}
