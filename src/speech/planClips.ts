/**
 * Turns a sentence into clips and gaps. The longest phrase that was recorded as a whole wins, figures become number
 * words, and a word without a clip is spelled: nothing that was to be said is left out.
 */
import { sayDigits, sayNumber } from "../facts/sayNumber"

export type ClipPiece = { clip: string } | { gapMs: number }

export interface ClipPlan {
  pieces: ClipPiece[]
  /** Words that had to be spelled, and signs that have no name at all. */
  spelled: string[]
}

const gapsMs = { word: 45, letter: 70, spelled: 160, comma: 240, stop: 420 }

const mostWordsInPhrase = 24
const stops = ".?!…"
const pauses = ",;:()–—"

/** Words, gaps and signs of a sentence in lower case. */
export const splitWords = (sentence: string): string[] => {
  const plain = sentence.normalize("NFC").toLowerCase().replaceAll("’", "'").replaceAll("Ω", "ω")
  const found = plain.match(/\p{L}[\p{L}\p{M}]*(?:'\p{L}+)*|\d+(?:\.\d+)?|[^\s\p{L}\d]/gu) ?? []
  return found.filter((token) => !"-\"“”‘'".includes(token)).flatMap(sayFigures)
}

/** "0.10" is "nought point one nought"; a code such as "007" is said digit by digit. */
const sayFigures = (token: string): string[] => {
  if (!/^\d/.test(token)) return [token]
  const [whole = "", digits = ""] = token.split(".")
  if ((whole.length > 1 && whole.startsWith("0")) || whole.length > 9) {
    return `${sayDigits(whole)}${digits && ` point ${sayDigits(digits)}`}`.split(" ")
  }
  return sayNumber(Number(token), digits.length).split(" ")
}

const isGap = (token: string) => stops.includes(token) || pauses.includes(token)

/** `clips` answers whether there is a clip of that name. */
export const planClips = (sentence: string, clips: { has(name: string): boolean }): ClipPlan => {
  const tokens = splitWords(sentence)
  const plan: ClipPlan = { pieces: [], spelled: [] }
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!
    const length = isGap(token) ? 0 : phraseAt(tokens, at, clips)
    if (isGap(token)) addGap(plan, stops.includes(token) ? gapsMs.stop : gapsMs.comma)
    else if (length > 0) addClip(plan, tokens.slice(at, at + length).join(" "), gapsMs.word)
    else spell(plan, token, clips)
    at += Math.max(1, length)
  }
  while (plan.pieces.length > 0 && "gapMs" in plan.pieces.at(-1)!) plan.pieces.pop()
  return plan
}

/** How many words from here on were recorded as one, 0 for none. */
const phraseAt = (tokens: readonly string[], at: number, clips: { has(name: string): boolean }): number => {
  for (let length = Math.min(mostWordsInPhrase, tokens.length - at); length > 0; length--) {
    if (clips.has(tokens.slice(at, at + length).join(" "))) return length
  }
  return 0
}

const spell = (plan: ClipPlan, token: string, clips: { has(name: string): boolean }): void => {
  plan.spelled.push(token)
  const letters = [...token.normalize("NFD")].filter((letter) => clips.has(`letter:${letter}`))
  for (const letter of letters) addClip(plan, `letter:${letter}`, gapsMs.letter)
  if (letters.length > 0) addGap(plan, gapsMs.spelled)
}

const addClip = (plan: ClipPlan, clip: string, gapMs: number): void => {
  plan.pieces.push({ clip })
  addGap(plan, gapMs)
}

/** Of two gaps in a row the longer one counts. A sentence does not open with a gap. */
const addGap = (plan: ClipPlan, gapMs: number): void => {
  const last = plan.pieces.at(-1)
  if (!last) return
  if ("gapMs" in last) last.gapMs = Math.max(last.gapMs, gapMs)
  else plan.pieces.push({ gapMs })
}
