/** Words around a claim that say that it is not plainly so: somebody else's place, a question, something amiss. */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { isEdgeGap } from "./Token"
import type { Island, Utterance } from "./Utterance"
import { trait } from "./wordTraits"

/** "my mate's house": the words are about another place. */
export const isElsewhere = ({ words, traits }: Utterance): boolean =>
  (traits & trait.house) !== 0 && /\w's (other )?(house|place|job|gaff|site)\b/.test(words.join(" "))

/** "what time does the shop open": a bare "what" wants a repeat, before other words it asks them. */
export const opensQuestion = ({ from, to }: Island, { words, tokens }: Utterance): boolean =>
  to - from === 1 && words[from] === "what" && to < tokens.length && !isEdgeGap(tokens[to - 1]!.after)

/** "label's on but faded": what stands behind the "but" was not understood, and may be why it does not count. */
export function isMarred(claim: Claim, { words, leftovers, tokens }: Utterance): boolean {
  if (words[claim.to] !== "but") return false
  const end = tokens.findIndex((token, at) => at > claim.to && isEdgeGap(token.after))
  const rest = leftovers.slice(claim.to + 1, end === -1 ? undefined : end + 1)
  return rest.length < 4 && rest.includes("unknown")
}

/** "is everything proved dead": a clause that begins with its verb asks. */
export function beginsAsking(claim: Claim, { words }: Utterance, { clause }: Clauses): boolean {
  const first = clause.indexOf(clause[claim.from]!)
  return (
    first < claim.from && /^(is|are|was|were|did|does|do|shall|should|could|would|will|can|has)$/.test(words[first]!)
  )
}

/** Whether only words that say little stand between two places. */
export const isSmallBetween = (from: number, to: number, { leftovers }: Utterance): boolean =>
  leftovers.slice(from, to).every((leftover) => leftover === "skippable" || leftover === "neutral")
