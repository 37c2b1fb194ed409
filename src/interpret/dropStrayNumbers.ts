/**
 * Tells measures of our work from other numbers: a count of things, a tool's size, a house number. Words that the
 * grammar does not know make a bare number worthless, and a measure doubtful.
 */
import type { Context } from "../facts/Interpretation"
import { type Claim, isMeasured } from "./Claim"
import type { Clauses } from "./Clauses"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

/** Words that may follow a number without being what it counts. */
const afterNumber = new Set(
  "and on for to in at with then or so but please there now that from off as is it it's dead exactly all by off mate cheers ta aye yes yeah too which fatter thinner thicker bigger smaller heavier finer along running heading feeding leading going coming across over under through up down back round around behind i we i'd".split(
    " ",
  ),
)
/** Words that may lead up to a number. */
const beforeNumber = new Set(
  "minus about roughly say around at in exactly only still it's that's is was it that reading says got rated be earth earth's make call comes to of a an the just i've we've there's another and so then now well right ok okay er um uh erm yes yeah aye yep for with but they're here's run goes done all both i or to till are were stranded solid yellow not no probably perhaps maybe possibly".split(
    " ",
  ),
)

/** Words whose numbers are names. */
const labels = new Set(
  "flat number room unit bay plot house floor circuit way page item job shop door phase block extension route gate code you me us him".split(
    " ",
  ),
)

/** Claims that are about our work; with an open question a strange one is asked about instead of dropped. */
export function dropStrayNumbers(
  claims: readonly Claim[],
  utterance: Utterance,
  clauses: Clauses,
  context: Context,
): Claim[] {
  const kept: Claim[] = []
  for (const claim of claims) {
    const isNumber = isMeasured(claim.kind) || claim.kind === "field"
    const left = isNumber ? judge(claim, utterance, clauses, context) : claim
    if (left) kept.push(left)
  }
  return kept
}

function judge(claim: Claim, utterance: Utterance, clauses: Clauses, context: Context): Claim | null {
  const isAsked = context.asked === claim.kind
  if (isSpokenReading(claim, utterance)) return hasStrangeUnit(claim, utterance) ? doubtful(claim) : claim
  if (isOfThing(claim, utterance) || isShareOfRun(claim, utterance) || isNameOf(claim, utterance)) return null
  if (isCount(claim, utterance)) return isAsked && !claim.isBare ? doubtful(claim) : null
  const isOther =
    isOfStretch(claim, utterance) || isOfStock(claim, utterance, clauses) || isLabel(claim, utterance, isAsked)
  if (isOther) return isAsked ? doubtful(claim) : null
  if (claim.isBare && hasLostUnit(utterance)) return doubtful(claim)
  if (hasStrangeUnit(claim, utterance)) return isAsked || claim.kind === "resistance" ? doubtful(claim) : null
  return amongStrangers({ claim, utterance, clauses, isAsked, hasItem: context.item !== undefined })
}

/** "sixty amp contactor": a thing of another trade or of the house has that measure. */
const isOfThing = ({ to }: Claim, { entries, tokens, traits }: Utterance): boolean =>
  (traits & trait.object) !== 0 &&
  tokens[to - 1]!.after === "space" &&
  ((entries[to]?.traits ?? 0) & trait.object) !== 0

/** "eleven metres, and about a metre of it's in trunking": a share of the length that was said before. */
const isShareOfRun = ({ kind, from, to }: Claim, { words, islands }: Utterance): boolean =>
  kind === "length" &&
  /^of (it's|it is|that's|that is|which is|which)\b/.test(
    words.slice(words[to - 1] === "it" ? to - 2 : to, to + 2).join(" "),
  ) &&
  islands.some((one) => one.rule === "length.length" && one.to <= from)

/** "the fourteen twenty-two's been cancelled": what something happened to is no measure. */
const isNameOf = ({ isBare, to }: Claim, { words }: Utterance): boolean =>
  isBare && words[to - 1]!.endsWith("'s") && /^(been|got|gone|coming|late)$/.test(words[to] ?? "")

/** "the first three metres": a stretch of the run and not its length. */
const isOfStretch = ({ kind, from }: Claim, { words }: Utterance): boolean =>
  kind === "length" && /^(first|last|next|other|final|initial|remaining|odd)$/.test(words[from - 1] ?? "")

/** "run out of ten mil", "ten metres of sixteen left": what there is to work with, and not what is there. */
function isOfStock({ kind, from, to }: Claim, { words, tokens }: Utterance, { clause }: Clauses): boolean {
  if (kind !== "length" && kind !== "conductor_csa") return false
  if (
    /\b(run out|running out|out|short|plenty|loads|drum|reel|roll|coil|need some|buy) of$/.test(
      words.slice(Math.max(0, from - 3), from).join(" "),
    )
  )
    return true
  let end = to
  while (end < words.length && clause[end] === clause[from] && !isEdgeGap(tokens[end - 1]!.after)) end += 1
  return (
    /^(left|spare)$/.test(words[end - 1]!) && end > to && !/^(the|to|on|my|your|hand|bottom|top)$/.test(words[end - 2]!)
  )
}

interface Setting {
  claim: Claim
  utterance: Utterance
  clauses: Clauses
  isAsked: boolean
  hasItem: boolean
}

/** What is left of a claim when words that we do not know stand beside it. */
function amongStrangers({ claim, utterance, clauses, isAsked, hasItem }: Setting): Claim | null {
  const unknown = unknownWords(claim, utterance, clauses)
  if (unknown === 0 || isSpokenReading(claim, utterance)) return claim
  if (claim.isBare) return isAsked && unknown < 3 ? doubtful(claim) : null
  const isLoose = claim.kind === "length" && !isAsked && !hasItem && unknown > 1
  return isLoose && !hasSite(utterance) ? null : claim
}

/** "0.05R": letters glued to the figures that are no unit of ours. */
const hasStrangeUnit = (claim: Claim, utterance: Utterance): boolean =>
  utterance.tokens[claim.to - 1]?.after === "none" && utterance.leftovers[claim.to] === "unknown"

/** A unit stands somewhere without its number. */
const hasLostUnit = (utterance: Utterance): boolean =>
  utterance.islands.some((one) => one.rule === "quantity.lost" && utterance.words[one.from] !== "square")

const doubtful = (claim: Claim): Claim =>
  claim.doubt
    ? claim
    : {
        ...claim,
        doubt: { candidates: claim.value === null ? [] : [claim.value], because: "some words were not understood" },
      }

/** A decimal with its nought spoken is a reading whatever stands around it. */
const isSpokenReading = (claim: Claim, utterance: Utterance): boolean =>
  claim.kind === "resistance" &&
  utterance.numbers.some(
    (one) => one.from >= claim.from && one.to <= claim.to && one.lead === "nought" && one.places > 1,
  )

/** "sixteen mil lugs", "two sugars", "flat two": the word beside the number says what it counts. */
function isCount(claim: Claim, utterance: Utterance): boolean {
  const next = claim.to < utterance.tokens.length && !isEdgeGap(utterance.tokens[claim.to - 1]!.after) ? claim.to : null
  const isUnitless = claim.isBare
  // "two bonds in ten": how many, and then their size.
  if (next !== null && isUnitless && /^(bonds|pipes|clamps|labels)$/.test(utterance.words[next]!)) return true
  if (next !== null && utterance.leftovers[next] !== null) {
    const leftover = utterance.leftovers[next]
    const word = utterance.words[next]!
    // "hundred metres final's on": the measure only names what is spoken of.
    if (leftover === "unknown" && word.endsWith("'s")) return true
    if (leftover === "unknown" || leftover === "chatter")
      return claim.kind !== "resistance" && claim.kind !== "length" && claim.kind !== "distance"
    if (isUnitless && leftover === "neutral" && !afterNumber.has(word)) return true
  }
  if (
    isUnitless &&
    next !== null &&
    utterance.islands.some((one) => one.from === next && /^steps\.(thing|\w+(Fitted|Cleaned))$/.test(one.rule))
  )
    return true
  return false
}

/** "flat two", "number six": the word before the number makes it a name. */
function isLabel(claim: Claim, utterance: Utterance, isAsked: boolean): boolean {
  const before = claim.from - 1
  if (!claim.isBare || before < 0 || isEdgeGap(utterance.tokens[before]!.after)) return false
  const word = utterance.words[before]!
  if (isAsked) return labels.has(word)
  const leftover = utterance.leftovers[before]
  return (leftover === "neutral" || leftover === "skippable") && !beforeNumber.has(word)
}

/** "thirteen, one three, metres": the unit comes behind a pause. */
function isOwnUnit(at: number, claim: Claim, { words }: Utterance): boolean {
  const units: Partial<Record<Claim["kind"], RegExp>> = {
    length: /^met(re|er)s?$/,
    resistance: /^ohms?$/,
    distance: /^(mil|mm|millimet(re|er)s?)$/,
    conductor_csa: /^(mil|mm|square)$/,
  }
  return at === words.length - 1 && (units[claim.kind]?.test(words[at]!) ?? false)
}

function unknownWords(claim: Claim, utterance: Utterance, clauses: Clauses): number {
  let count = 0
  for (let at = 0; at < utterance.leftovers.length; at += 1)
    if (
      utterance.leftovers[at] === "unknown" &&
      !isOwnUnit(at, claim, utterance) &&
      (claim.isBare || clauses.clause[at] === clauses.clause[claim.from])
    )
      count += 1
  return count
}

/** Whether the words speak of a conductor or a part. */
const hasSite = (utterance: Utterance): boolean =>
  utterance.islands.some((one) => /^(parts\.(part|earthing)|size\.)/.test(one.rule)) ||
  utterance.words.some((word) => ["cable", "run", "bond", "conductor", "board"].includes(word))
