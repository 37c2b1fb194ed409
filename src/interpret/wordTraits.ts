/**
 * What a word can be a sign of, as bits: the bits of all words of an utterance together say at once what need not be
 * looked for in it.
 */
import type { WordBook } from "./WordBook"

export const trait = {
  /** Begins a clause, or a segment of one. */
  breaks: 1,
  joins: 2,
  /** Speaks of a group or of one of it; `counts` do so only beside other words. */
  group: 4,
  counts: 8,
  /** Somebody's place goes by it. */
  house: 16,
  ish: 32,
  /** A thing of another trade or of the house. */
  object: 64,
  /** May be heard for a part. */
  partAlike: 128,
  /** A building that a supply may be said of. */
  premises: 256,
  /** Last word of the names that parts and the places of parts are given. */
  partHead: 512,
  /** May make a value a part of a sum or of a run; see `isReckoned`. */
  reckons: 1024,
} as const

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(" "))

const breaks = setOf("but so because cos although though")
const group = setOf(
  "all both each every any most some neither other others rest everything them em 'em these those bonds last apiece another",
)
const counts = setOf("one two three four five six first second third")
const houses = setOf("house place job gaff site")
const partHeads = setOf(
  "house room pool shed barn hut garage workshop plant tower turret annexe annex outbuilding greenhouse hydrant sprinkler sprinklers boiler cooker hob tank pump duct ductwork lift handrail fountain",
)

const reckons = setOf(
  "twice thrice double treble doubled times less more shorter longer plus minus including includes with take taking knock knocking lead leads nulled nulling calculated calculates calculation works worked comes within inside lots runs lengths pair couple cores bits each in twinned then back",
)

/** The traits of a word as grammars spell it. */
export function traitsOf(word: string, book: WordBook): number {
  const plain = word.replace(/'s$/, "")
  return (
    (breaks.has(word) ? trait.breaks : 0) |
    (word === "and" ? trait.joins : 0) |
    (group.has(plain) ? trait.group : 0) |
    (counts.has(plain) ? trait.counts : 0) |
    (houses.has(word) ? trait.house : 0) |
    (word === "ish" ? trait.ish : 0) |
    (book.list("objects").has(plain) ? trait.object : 0) |
    (book.soundAlikes.part.has(plain) ? trait.partAlike : 0) |
    (book.list("premises").has(plain) ? trait.premises : 0) |
    (partHeads.has(plain) ? trait.partHead : 0) |
    (reckons.has(word) ? trait.reckons : 0)
  )
}
