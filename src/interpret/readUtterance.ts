/**
 * Takes an utterance apart: tokens, spelling, numbers, then grammar phrases as islands in free speech. What no phrase
 * took is sorted by how much it says.
 */
import { findIslands } from "./findIslands"
import { splitToken } from "./gluedPieces"
import type { Language } from "./Language"
import type { Leftover } from "./Leftover"
import type { WordEntry } from "./Lexicon"
import { readAtoms } from "./readAtoms"
import { readNumbers } from "./readNumbers"
import type { Token } from "./Token"
import { tokenise } from "./tokenise"
import type { Island, Utterance } from "./Utterance"

/** Takes a text apart; `asked` lets the answers to one question count. */
export function readUtterance(text: string, language: Language, asked = ""): Utterance {
  const { tokens, entries } = unglued(tokenise(text), language)
  joinUnits(tokens, entries, language)
  const words = entries.map((entry) => entry.word)
  const atoms = readAtoms({ tokens, words, entries }, language.book)
  const numbers = atoms ? readNumbers({ atoms, tokens, words }) : []
  const islands = findIslands({ tokens, words, entries, numbers }, language, asked)
  const leftovers = leftoversOf(words, entries, islands)
  let traits = 0
  for (const entry of entries) traits |= entry.traits
  let grammars = 0
  for (const island of islands) grammars |= island.grammar
  const isClear = !leftovers.includes("unknown") && !leftovers.includes("chatter")
  return { text, tokens, words, entries, numbers, islands, leftovers, isClear, grammars, traits }
}

/** Tokens with what is known of each; words that came glued into one are told apart. */
function unglued(tokens: readonly Token[], { lexicon }: Language): { tokens: readonly Token[]; entries: WordEntry[] } {
  const entries = tokens.map((token) => lexicon.of(token.text, token.isFigure))
  if (!entries.some((entry) => entry.pieces)) return { tokens, entries }
  const apart = tokens.flatMap((token, at) => {
    const { pieces } = entries[at]!
    return pieces ? splitToken(token, pieces) : [token]
  })
  return { tokens: apart, entries: apart.map((token) => lexicon.of(token.text, token.isFigure)) }
}

/** "10. Mil. 6. Metres.": where a unit is a sentence of its own, the stop before it is only a pause of the engine's. */
function joinUnits(tokens: readonly Token[], entries: readonly WordEntry[], { book }: Language): void {
  for (let at = 0; at + 1 < tokens.length; at += 1) {
    const token = tokens[at]!
    if (token.after !== "stop" || !(token.isFigure || entries[at]!.number)) continue
    // "10. 5. Metres." may be ten and a half.
    if (at > 0 && (tokens[at - 1]!.isFigure || entries[at - 1]!.number)) continue
    const isAlone = at + 2 === tokens.length || tokens[at + 1]!.after === "stop"
    if (isAlone && book.unitWords.has(entries[at + 1]!.word)) token.after = "space"
  }
}

function leftoversOf(
  words: readonly string[],
  entries: readonly WordEntry[],
  islands: readonly Island[],
): Array<Leftover | null> {
  const leftovers: Array<Leftover | null> = []
  let island = 0
  for (let at = 0; at < entries.length; at += 1) {
    while (island < islands.length && islands[island]!.to <= at) island += 1
    const isTaken = island < islands.length && islands[island]!.from <= at
    const { sort } = entries[at]!
    leftovers.push(isTaken ? null : sort === "chatter" && isBehind(at, words) ? "neutral" : sort)
  }
  return leftovers
}

/** "behind the cooker", "by the front door": what only tells where something is, is no talk. */
const isBehind = (at: number, words: readonly string[]): boolean =>
  /\b(behind|beside|below|above|under|underneath|near|beneath|by|past|outside|inside|opposite) the( \w+)?$/.test(
    words.slice(Math.max(0, at - 3), at).join(" "),
  )
