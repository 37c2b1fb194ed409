/** "each of them's in ten mil", "ten mil on one and sixteen on the other": a group or its members, without a name. */
import type { Claim } from "./Claim"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

const few = "(two|three|four|five|six)"
const groups = [
  `(all|both|each|every|any|two|three|four|five|most|some|neither|one) of (them|'em|em|these|those|the bonds)('s)?`,
  `(all|the other|the|those|these|the last|the first|other) ${few}('s|'re)?`,
  "(all|the other|the|those|these) (others|other ones|rest)('s|'re)?",
  "(each|every|the other|another) (one|bond|part)('s)?",
  "everything('s)?",
]
const links =
  "( (is|are|was|were|all|done|bonded|run|wired|fed|now|and|clamped|labelled|cleaned|connected|fitted|tested))*( in)?"
const before = new RegExp(`\\b(${groups.join("|")})${links}$`)
const inside = /\b(on|for|to) (both|each|all|every)$/
const behind =
  /^(each\b|apiece|(on|for|to) (the )?(one|other|others|rest|each|every|both|all|first|second|two|three|them)\b(?! (side|end|wall|hand|leg|floor|hundred|thousand|point|meg|k)))/

/** Whether the words may speak of a group, or of one of it, around the claim: a quick look. */
export const maySpeakOfGroup = ({ from, to }: Claim, { entries, traits }: Utterance): boolean =>
  (traits & trait.group) !== 0 ||
  ((traits & trait.counts) !== 0 &&
    entries.some((one, at) => (at < from || at >= to) && (one.traits & trait.counts) !== 0))

const member =
  /(^|\b(and|but) )(one|the other|the (first|second|third|last)( one| bond)?|(first|second|third|other)( one)?)('s| is| was| are)( (in|done|now))*$/

/** Whether the claim is said of one of several: "one's ten mil and the other's sixteen" fits neither part named before. */
export const takesMember = (claim: Claim, { words, tokens }: Utterance): boolean => {
  if (claim.from === 0) return false
  const start = tokens.findLastIndex((token, at) => at < claim.from && isEdgeGap(token.after)) + 1
  return member.test(words.slice(start, claim.from).join(" "))
}

/** Whether the claim is said of several parts, or of one of several, that nobody named. */
export function takesGroup(claim: Claim, { words }: Utterance): boolean {
  return (
    before.test(words.slice(0, claim.from).join(" ")) ||
    inside.test(words.slice(claim.from, claim.to).join(" ")) ||
    behind.test(words.slice(claim.to, claim.to + 5).join(" ")) ||
    // "on one leg", alone an end of the bond, is one of two where the other is named.
    (/^(on|for) one\b/.test(words.slice(claim.to, claim.to + 2).join(" ")) && /\bthe other\b/.test(words.join(" ")))
  )
}
