/**
 * Takes an utterance apart: tokens, spelling, numbers, then grammar phrases as islands in free speech. Of all phrases
 * that match, the set is taken that covers most words with fewest phrases; a number that runs into another is never
 * split for a longer phrase.
 */
import { formOf } from "../grammar/compileRules"
import type { GrammarMatcher } from "../grammar/GrammarMatcher"
import type { GivenMatch, WordForm, WordRow } from "../grammar/WordRow"
import { askedRules, islandRules, numberRule } from "./islandRules"
import type { NumberReading } from "./NumberReading"
import { readAtoms } from "./readAtoms"
import { readNumbers } from "./readNumbers"
import { isEdgeGap, type Token } from "./Token"
import { tokenise } from "./tokenise"
import type { Island, Leftover, Utterance } from "./Utterance"
import type { WordBook } from "./WordBook"

export interface Language {
  matcher: GrammarMatcher
  book: WordBook
}

const numberForm: WordForm = { word: formOf(numberRule), doubt: 0 }
const trustDoubt = { sure: 0, asked: 1, doubt: 2 } as const

/** Takes a text apart; `asked` lets the answers to one question count. */
export function readUtterance(text: string, language: Language, asked = ""): Utterance {
  const tokens = tokenise(text)
  const words = tokens.map((token) => spelled(token.text, language.book))
  const numbers = readNumbers({ atoms: readAtoms(tokens, words, language.book), tokens, words })
  const islands = chooseIslands(findIslands({ tokens, words, numbers }, language, asked), words, language.book)
  const taken = new Set(islands.flatMap((one) => range(one.from, one.to)))
  const leftovers = words.map((word, at) =>
    taken.has(at) ? null : sortOf(word, tokens[at]!, language.book, isBehind(at, words)),
  )
  return { text, tokens, words, numbers, islands, leftovers }
}

function findIslands(
  { tokens, words, numbers }: Pick<Utterance, "tokens" | "words" | "numbers">,
  { matcher, book }: Language,
  asked: string,
): Island[] {
  const rules = [...(askedRules[asked] ?? []), ...islandRules]
  const skippable = book.list("skippable")
  const starts = new Map(numbers.map((one) => [one.from, one] as const))
  const insides = new Set(numbers.flatMap((one) => range(one.from + 1, one.to)))
  const row: WordRow = {
    length: tokens.length,
    forms: words.map((word, at) => [
      ...formsOf(word, tokens[at]!, insides.has(at), book),
      ...(starts.has(at) ? [numberForm] : []),
    ]),
    isSkippable: (at) => skippable.has(words[at]!) && !starts.has(at),
    isEdge: (at) => at > 0 && at < tokens.length && isEdgeGap(tokens[at - 1]!.after) && !insides.has(at),
    given: (rule, at) => (rule === numberRule ? givenNumber(starts.get(at)) : undefined),
  }
  const session = matcher.over(row)
  const found: Island[] = []
  for (let at = 0; at < tokens.length; at += 1)
    for (const rule of rules.filter((one) => matcher.mayBegin(one, at, row)))
      for (const match of session.match(rule, at))
        if (match.end > at) found.push({ rule, from: at, to: match.end, tags: match.tags, doubt: match.doubt })
  return found.filter(
    (one) =>
      isSensible(one, numbers, words) && (one.rule !== "guards.question" || opensClause(one, tokens, words, book)),
  )
}

/** The word as the grammars spell it; a "'s" stays on. */
function spelled(text: string, book: WordBook): string {
  const known = book.soundAlikes.spelling.get(text)
  if (known) return known.meant
  const bare = text.endsWith("'s") ? book.soundAlikes.spelling.get(text.slice(0, -2)) : undefined
  return bare ? `${bare.meant}'s` : text
}

/** "two metres twenty" is metres and centimetres; "fourteen metres nought point nought three" is two values. */
function isSensible(island: Island, numbers: readonly NumberReading[], words: readonly string[]): boolean {
  // "nought point nought two both times" counts readings, not what was read.
  if (island.rule === "quantity.foreign") return !isBothTimes(island, words)
  if (island.rule === "length.length" && !island.tags.some((one) => one.text.startsWith("unit")))
    return !/^(mil|mils|mm|millimetres?|square|sq)$/.test(words[island.to] ?? "")
  if (island.rule === "quantity.lost") return !numbers.some((one) => one.to === island.from)
  const tag = island.tags.find((one) => one.text === "cm")
  if (!tag) return true
  const number = numbers.find((one) => one.from >= tag.from && one.to <= tag.to)
  return number?.shape === "whole" && number.value < 100 && number.spoken
}

const isBothTimes = (island: Island, words: readonly string[]): boolean =>
  words[island.to - 1] === "times" && /^(both|all)$/.test(words[island.to - 2] ?? "")

/** A question begins its clause: "is the label on" asks, "that is the label on" tells. */
function opensClause(island: Island, tokens: readonly Token[], words: readonly string[], book: WordBook): boolean {
  for (let at = island.from - 1; at >= 0 && !isEdgeGap(tokens[at]!.after); at -= 1)
    if (!book.list("skippable").has(words[at]!) && !["and", "but", "or", "hey", "oh"].includes(words[at]!)) return false
  return true
}

const givenNumber = (one: NumberReading | undefined): readonly GivenMatch[] => (one ? [{ end: one.to, tags: [] }] : [])

/** The words a place can be read as. Inside a number only its own digits are left, so that no unit is made of them. */
function formsOf(word: string, token: Token, isInNumber: boolean, book: WordBook): WordForm[] {
  const forms: WordForm[] = [{ word, doubt: 0 }]
  if (token.isFigure || isInNumber) return forms
  if (word.endsWith("'s") && word.length > 3) forms.push({ word: word.slice(0, -2), doubt: 0 })
  for (const place of ["phrase", "unit"] as const) {
    const meaning = book.soundAlikes[place].get(word)
    if (meaning) forms.push({ word: meaning.meant, doubt: trustDoubt[meaning.trust] })
  }
  return forms
}

/** Dynamic programming from the end: most covered words first, then fewest phrases, then the rules' own order. */
function chooseIslands(found: readonly Island[], words: readonly string[], book: WordBook): Island[] {
  const { length } = words
  const weights = words.map((word) => (book.list("skippable").has(word) ? 20 : 100))
  const best: Array<{ score: number; island: Island | null; next: number }> = []
  best[length] = { score: 0, island: null, next: length }
  for (let at = length - 1; at >= 0; at -= 1) {
    let choice = { score: best[at + 1]!.score, island: null as Island | null, next: at + 1 }
    for (const island of found) {
      if (island.from !== at) continue
      const score = best[island.to]!.score + scoreOf(island, weights)
      if (score > choice.score) choice = { score, island, next: island.to }
    }
    best[at] = choice
  }
  const chosen: Island[] = []
  for (let at = 0; at < length; at = best[at]!.next) if (best[at]!.island) chosen.push(best[at]!.island!)
  return chosen
}

function scoreOf(island: Island, weights: readonly number[]): number {
  const rank = islandRules.indexOf(island.rule)
  const isTalk = /^(guards|answers|repairs|commands|notes)/.test(island.rule)
  const covered = weights
    .slice(island.from, island.to)
    .reduce((sum, weight) => sum + (isTalk ? Math.max(weight, 75) : weight), 0)
  return covered - 40 - rank / 2 - island.doubt * 30 + (names.has(island.rule) ? 30 : 0)
}

/** What a value belongs to is told by these: a longer phrase must not swallow them. */
const names = new Set(["parts.part", "parts.earthing", "parts.notPart"])

/** "behind the cooker", "by the front door": what only tells where something is, is no talk. */
const isBehind = (at: number, words: readonly string[]): boolean =>
  /\b(behind|beside|below|above|under|underneath|near|beneath|by|past) the( \w+)?$/.test(
    words.slice(Math.max(0, at - 3), at).join(" "),
  )

function sortOf(word: string, token: Token, book: WordBook, isPlace: boolean): Leftover {
  if (token.isFigure) return "unknown"
  const plain = word.replace(/'s$/, "")
  if (book.list("chatter").has(word) || book.list("chatter").has(plain)) return isPlace ? "neutral" : "chatter"
  if (book.list("skippable").has(word)) return "skippable"
  if (book.list("neutral").has(word) || book.list("neutral").has(plain)) return "neutral"
  return "unknown"
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at)
