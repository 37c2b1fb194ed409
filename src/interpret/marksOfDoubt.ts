/** Words around a claim that say that it is not plainly so: somebody else's place, a question, something amiss. */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { isEdgeGap } from "./Token"
import type { Island, Utterance } from "./Utterance"
import { trait } from "./wordTraits"

/** "my mate's house": the words are about another place. */
export const isElsewhere = ({ words, traits }: Utterance): boolean =>
  (traits & trait.house) !== 0 && /\w's (other )?(house|place|job|gaff|site)\b/.test(words.join(" "))

/** "what time does the shop open": a bare "what" wants a repeat, before other words it asks; "what they've put" tells. */
export const opensQuestion = ({ from, to }: Island, { words, tokens }: Utterance): boolean =>
  to - from === 1 &&
  words[from] === "what" &&
  to < tokens.length &&
  !isEdgeGap(tokens[to - 1]!.after) &&
  !/^(i|we|they|he|she|i've|we've|they've|he's|she's|you've|they'd|i'm)$/.test(words[to]!)

/** Whether something at the step was not understood, or denies half of it. */
export const isUnclear = (claim: Claim, utterance: Utterance): boolean =>
  isMarred(claim, utterance) || isHalved(claim, utterance) || isStrangelyDone(claim, utterance)

/** "label's on but faded": what stands behind the "but" was not understood, and may be why it does not count. */
function isMarred(claim: Claim, { words, leftovers, tokens }: Utterance): boolean {
  if (words[claim.to] !== "but") return false
  const end = tokens.findIndex((token, at) => at > claim.to && isEdgeGap(token.after))
  const rest = leftovers.slice(claim.to + 1, end === -1 ? undefined : end + 1)
  return rest.length < 4 && rest.includes("unknown")
}

/** "tested dead but not proved": what stands behind the "but" denies a part of it, and of no other thing or part. */
function isHalved(claim: Claim, { words, tokens, islands }: Utterance): boolean {
  if (
    !/^(but|though) (it's |she's |that's |it |she )?(not|never|isn't|hasn't|wasn't)\b/.test(
      words.slice(claim.to, claim.to + 4).join(" "),
    )
  )
    return false
  const pause = tokens.findIndex((token, at) => at > claim.to && isEdgeGap(token.after))
  const end = pause === -1 ? words.length : pause + 1
  return !islands.some(
    (one) =>
      one.from > claim.to && one.to <= end && (one.said.has("thing") || one.said.has("item") || one.said.has("step")),
  )
}

/**
 * "I hivvent fitted the clamp": a strange word between who did it and what was done may deny it. "Dave proved it dead": what
 * somebody else proved is no proof of one's own.
 */
const isStrangelyDone = ({ value, from }: Claim, { words, leftovers, tokens }: Utterance): boolean =>
  leftovers[from - 1] === "unknown" &&
  !isEdgeGap(tokens[from - 1]!.after) &&
  ((value === "isolated_proved_dead" && (from === 1 || isEdgeGap(tokens[from - 2]!.after))) ||
    /^(i|a|ah|we|he|she|they|you)$/.test(words[from - 2] ?? ""))

/** "it says PME but there's no link": what is seen beside the arrangement's name speaks against it. */
const isGainsaid = ({ kind, to }: Claim, { words }: Utterance): boolean =>
  kind === "earthing_arrangement" &&
  /^but (there's no|there isn't|there is no|no|i can't|can't|i cannot)\b/.test(words.slice(to, to + 4).join(" "))

/** "ten mil on the gas isn't right": the value is named only to be doubted. */
const isSaidWrong = ({ to }: Claim, { words }: Utterance): boolean =>
  /^((on|for|to) (the )?\w+( \w+)? )?(is wrong|(isn't|isnae|is not|can't be|cannot be) (right|correct|it))\b/.test(
    words.slice(to, to + 8).join(" "),
  )

/** "looks PME", "seems a ten" */
const isOnlyLooks = ({ from }: Claim, { words }: Utterance): boolean =>
  /\b(looks|seems)( (a|an|to be))*$/.test(words.slice(Math.max(0, from - 3), from).join(" "))

const opensDoubt = new Set(["or", "could", "might", "may", "possibly", "perhaps", "maybe", "but"])

/** "nought point nought five or thereunder", "ten mil, could be six": what is behind a value bounds it or doubts it. */
export const isLeftOpen = (claim: Claim, utterance: Utterance): boolean => {
  const { words, leftovers, islands } = utterance
  const { to } = claim
  if (isGainsaid(claim, utterance) || isOnlyLooks(claim, utterance) || isSaidWrong(claim, utterance)) return true
  if (!opensDoubt.has(words[to] ?? "")) return false
  if (words[to] === "or" && leftovers[to + 1] === "unknown") return true
  const may =
    /^(or )?((could|might|may) (well )?(be|have been)|possibly|perhaps|maybe|but( (it's|there's|only|really|actually|with|a|an))+) /.exec(
      words.slice(to, to + 5).join(" "),
    )
  if (!may) return false
  const next = to + may[0].trim().split(" ").length
  const own = islands.find((one) => one.from <= claim.from && claim.from < one.to)
  const other = islands.find((one) => one.from >= next && one.from <= next + 1)
  return other !== undefined && (other.rule === "quantity.bare" || other.rule === own?.rule)
}

/** "the network say TN-S but that's a combined cutout": what is told and what is seen do not agree. */
export const isContradicted = ({ kind }: Claim, { islands }: Utterance): boolean =>
  kind === "earthing_arrangement" && islands.some((one) => one.rule === "arrangement.doubtful")

/** "main switch says a hundred amps": near the fuse, and not the fuse. */
export const isOfSwitch = ({ kind, from }: Claim, { words }: Utterance): boolean =>
  kind === "fuse_rating" &&
  /\b(switch|isolator|breaker|board|panel|rcd)('s| is| says| reads| marked| rated)+( (a|at|the|only))*$/.test(
    words.slice(0, from).join(" "),
  )

/** "is everything proved dead": a clause that begins with its verb asks. */
export function beginsAsking(claim: Claim, utterance: Utterance, { clause }: Clauses): boolean {
  const { words } = utterance
  const first = clause.indexOf(clause[claim.from]!)
  return (
    !isAnswered(claim, utterance) &&
    first < claim.from &&
    /^(is|are|was|were|did|does|do|shall|should|could|would|will|can|has)$/.test(words[first]!)
  )
}

/** "have the leads been nulled? yes they have": of a step only, since of two values either may be the answer. */
export const isAnswered = ({ kind, to }: Claim, { words }: Utterance): boolean =>
  kind === "step_done" &&
  /^(now )?(yes|yeah|yep|aye) (they|it|i|we|that|she) (have|has|are|is|did|do|was|were)( (now|indeed))?$/.test(
    words.slice(to).join(" "),
  )

/** Whether only words that say little stand between two places. */
export const isSmallBetween = (from: number, to: number, { leftovers }: Utterance): boolean =>
  leftovers.slice(from, to).every((leftover) => leftover === "skippable" || leftover === "neutral")

/** Talk of something else in the claim's clause, or anywhere beside a bare number. */
export function isChatter(claim: Claim, { leftovers }: Utterance, { clause, segment }: Clauses): boolean {
  // "padlock's on and the key's in my pocket": what only asks is not let pass for talk behind an "and".
  const part = claim.doubt && claim.kind === "step_done" ? segment : clause
  return leftovers.some((leftover, at) => leftover === "chatter" && (claim.isBare || part[at] === part[claim.from]))
}

/** "say the label's on": a clause that opens so supposes. */
export function isSupposed(claim: Claim, { words }: Utterance, { clause }: Clauses): boolean {
  if (claim.kind !== "step_done") return false
  const first = clause.indexOf(clause[claim.from]!)
  return words[first] === "say" && first < claim.from
}

/** "… and the label is on" starts afresh; "… and fitted the label" goes on under the same not. */
export const hasOwnSubject = (claim: Claim, { words }: Utterance): boolean =>
  ["the", "a", "my", "that", "is"].includes(words[claim.from - 1] ?? "")

/** "I think, sixteen", "sixteen, I think": a comma does not free the value. */
export function leadsIn(island: Island, claim: Claim, { islands }: Utterance, { sentence, clause }: Clauses): boolean {
  if (sentence[claim.from] !== sentence[island.from]) return false
  const isAlone = () => islands.every((one) => one === island || clause[one.from] !== clause[island.from])
  return island.to === claim.from || (island.from >= claim.to && isAlone())
}
