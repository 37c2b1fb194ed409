/**
 * Whose measure it is when the sentence names an owner of its own: "the hose is ten metres", "doorbell wire's one point
 * five mil". A known thing of another trade or of the house is left alone; an owner nobody knows is asked about.
 */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { bitsOf } from "./GrammarBits"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

/** "object" for a known thing that is none of ours, "stranger" for an unknown owner, "kind" for an unknown kind of cable. */
export type ForeignSubject = "object" | "stranger" | "kind"

const verb =
  /^(is|was|are|were|has|had|came|comes|read|reads|shows|measures|measured|put|goes|went|runs|ran|needs|takes)$/
const heads = /^(wire|wires|cable|cables|circuit|circuits|lead|leads|supply|feed|flex|ring|conductor|tail|tails)('s)?$/
const places = /^(in|on|at|of|to|for|by|behind|beside|under|up|above|below|near|from|along|over|outside|inside)$/

const ours =
  /^(it|water|gas|oil|heating|steel|steelwork|bond|bonding|earth|earthing|cable|run|conductor|pipe|clamp|reading|distance|length)$/

const parts = bitsOf("parts")

/** The foreign owner of the claim's value in its own clause, or null when none is named. */
export function foreignSubject(claim: Claim, utterance: Utterance, clauses: Clauses): ForeignSubject | null {
  const { words, leftovers, islands, entries } = utterance
  if (utterance.isClear && (utterance.traits & trait.object) === 0) return null
  for (let at = claim.from - 1; at >= 0 && clauses.clause[at] === clauses.clause[claim.from]; at -= 1) {
    if (islands.some((one) => one.grammar === parts && one.from <= at && at < one.to)) return null
    const { traits } = entries[at]!
    if ((traits & trait.partAlike) !== 0) continue
    const isObject = (traits & trait.object) !== 0
    if ((!isObject && leftovers[at] !== "unknown") || isPlace(at, utterance, clauses)) continue
    const owner = ownerAt(at, claim, words)
    if (owner) return isObject ? "object" : owner
  }
  return null
}

/** Whether the strange word at that place owns what is said behind it, alone or with the name of a cable. */
function ownerAt(at: number, claim: Claim, words: readonly string[]): ForeignSubject | null {
  const word = words[at]!
  const next = words[at + 1] ?? ""
  if (word.endsWith("'s") || verb.test(next)) return "stranger"
  if (/(ed|ing)$/.test(word) && !heads.test(next)) return null
  if (heads.test(next) && (next.endsWith("'s") || verb.test(words[at + 2] ?? ""))) return "kind"
  const isIn = (next === "in" || next === "fed") && claim.from - at <= 2
  return isIn && (at === 0 || /^(the|and|a)$/.test(words[at - 1]!)) ? "kind" : null
}

/** "water in the flat upstairs is", "up the wall was": the strange word tells only where something is. */
function isPlace(at: number, { words }: Utterance, clauses: Clauses): boolean {
  const article = /^(the|a|an|my|this|that)$/.test(words[at - 1] ?? "") ? 1 : 0
  if (places.test(words[at - 1 - article] ?? "")) return true
  const own = words.findLastIndex(
    (word, place) => place < at && clauses.clause[place] === clauses.clause[at] && ours.test(word),
  )
  return own !== -1 && words.slice(own, at).some((word) => places.test(word))
}
