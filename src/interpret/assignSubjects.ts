/**
 * Which item each claim belongs to: the part named right behind it ("ten on the gas"), else the last one named before
 * it, else the one named later in the sentence, else the current item.
 */
import type { Step } from "../facts/Fact"
import type { Context } from "../facts/Interpretation"
import { type Item, isBond } from "../facts/Item"
import { ownerOfStep } from "../facts/ownerOfStep"
import { repairMarks } from "./applyRepairs"
import type { Claim } from "./Claim"
import { eitherOfAbsent } from "./eitherOfAbsent"
import { bitsOf } from "./GrammarBits"
import { followsStrangePart } from "./strangePart"
import { isEdgeGap, isSentenceEnd } from "./Token"
import { maySpeakOfGroup, takesGroup, takesMember } from "./takesGroup"
import { type Island, tagValue, type Utterance } from "./Utterance"

/** A part named in the utterance; parts named in a row ("water, gas and oil") share a group. */
export interface Mention {
  item: Item
  from: number
  to: number
  group: number
}

const parts = bitsOf("parts")
/** Grammars whose phrases name a part that the rest may be said of. */
const naming = bitsOf("parts", "resistance")
const linkWords = new Set(["and", "the", "a", "plus", "both", "to", "on", "for", "also"])
const postWords = new Set(["on", "for", "to", "onto", "of", "in", "at", "up", "the", "a", "my", "is", "it's", "that's"])
const withoutSubject = new Set(["neutral_csa", "earthing_arrangement", "fuse_rating", "polarity", "field"])

/** Parts named, without those that were denied or taken back. */
export function readMentions(utterance: Utterance): Mention[] {
  const islands = utterance.islands.filter(
    (one) => (one.grammar & naming) !== 0 && one.said.has("item") && one.rule !== "quantity.same",
  )
  if (islands.length === 0) return []
  const marks = repairMarks(utterance)
  const kept = islands.filter(
    (one, at) => !isDenied(utterance, one) && !isReplaced(utterance, one, islands[at + 1], marks),
  )
  let group = 0
  return kept.map((one, at) => {
    const before = kept[at - 1]
    if (before && !isLinked(utterance, before, one)) group += 1
    return { item: tagValue(one, "item")!, from: one.from, to: one.to, group }
  })
}

function isDenied(utterance: Utterance, island: Island): boolean {
  return utterance.islands.some(
    (one) =>
      (/^guards\.(not|except)$/.test(one.rule) || isOpenNot(one, utterance)) &&
      one.to <= island.from &&
      utterance.words.slice(one.to, island.from).every((word) => /^(the|on|for)$/.test(word)),
  )
}

/** "it's not on the water": a no that goes on into what it denies. */
const isOpenNot = (island: Island, { words, tokens }: Utterance): boolean =>
  island.rule === "answers.deny" && words[island.to - 1] === "not" && tokens[island.to - 1]!.after === "space"

/** "water, no, gas": the first is replaced by the second. */
function isReplaced(utterance: Utterance, island: Island, next: Island | undefined, marks: readonly Island[]): boolean {
  if (!next) return false
  const mark = marks.find((one) => one.from >= island.to && one.to <= next.from)
  if (!mark) return false
  if (isThingAgain(utterance, mark, next)) return true
  const between = utterance.islands.filter(
    (one) => one.from >= island.to && one.to <= next.from && !marks.includes(one) && one.rule !== "steps.done",
  )
  return between.length === 0
}

/** "gas label's on, sorry, water label": the thing is named again with another part and nothing new is said of it. */
function isThingAgain(utterance: Utterance, mark: Island, next: Island): boolean {
  const behind = utterance.islands.filter((one) => one.from >= mark.to && one !== next)
  // "hang on, that's the gas" points at what was said; "hang on, the gas" goes on to it.
  const isPointed = /^(that's|that was|that is|this is|it's|it was)( the)?$/.test(
    utterance.words.slice(mark.to, next.from).join(" "),
  )
  const isPause = !isPointed && /wait|hang|hold/.test(utterance.words.slice(mark.from, mark.to).join(" "))
  if (behind.length === 0 && next.to === utterance.tokens.length && !isPause) return true
  const [thing] = behind
  return (
    behind.length === 1 &&
    thing?.rule === "steps.thing" &&
    thing.from === next.to &&
    thing.to === utterance.tokens.length &&
    utterance.islands.some(
      (one) => one.to <= mark.from && tagValue(one, "step")?.startsWith(tagValue(thing, "thing") ?? "-"),
    )
  )
}

/** "ten on the gas, the water needs sixteen": what stands with a verb of its own behind a pause begins anew. */
const hasOwnVerb = ({ words, tokens }: Utterance, before: Island, after: Island): boolean => {
  const verb = words[after.to] ?? ""
  const isPaused = isEdgeGap(tokens[before.to - 1]!.after) && !words.slice(before.to, after.from).includes("and")
  return (
    /^(needs|wants|should|must|will|never|still)$|(n't|nae)$/.test(verb) || (isPaused && /^(is|was|has)$/.test(verb))
  )
}

function isLinked(utterance: Utterance, before: Island, after: Island): boolean {
  if (hasOwnVerb(utterance, before, after)) return false
  const isValue = (one: Island) => !/^steps\.done$/.test(one.rule)
  if (utterance.islands.some((one) => one.from >= before.to && one.to <= after.from && isValue(one))) return false
  return utterance.words.slice(before.to, after.from).every((word) => linkWords.has(word))
}

/** Whether the claim is about one item at all. */
export function takesSubject(claim: Claim): boolean {
  if (withoutSubject.has(claim.kind)) return false
  return !(claim.kind === "step_done" && ownerOfStep[claim.value as Step] !== undefined)
}

/** Claims with their items; one said of several parts becomes one for each. */
export function assignSubjects(
  claims: readonly Claim[],
  mentions: readonly Mention[],
  utterance: Utterance,
  context: Context,
): Claim[] {
  const assigned: Claim[] = []
  const isStrange = claims.some((claim) => followsStrangePart(claim, utterance))
  for (const claim of claims) {
    const mayBeGroup = maySpeakOfGroup(claim, utterance)
    const named = namedEarth(claim, utterance, mentions)
    const absent = eitherOfAbsent(claim, mentions, utterance)
    if (!takesSubject(claim)) assigned.push(claim)
    else if (absent) assigned.push(ofWhich(claim, absent))
    else if (named && !postposed(claim, mentions, utterance)) assigned.push({ ...claim, subject: named })
    else if (mayBeGroup && takesMember(claim, utterance)) assigned.push(ofWhich(claim, []))
    else if (mayBeGroup && isBeforeParts(claim, mentions) && takesGroup(claim, utterance))
      assigned.push(...ofLater(claim, mentions, utterance))
    else {
      const items = itemsFor(claim, mentions, utterance)
      const either = eitherOf(items, mentions, utterance)
      const around = { utterance, context, mayBeGroup, isStrange }
      assigned.push(...(either ? [ofWhich(claim, either)] : owned(claim, items, around)))
    }
  }
  return assigned.map((claim) => lengthOfSize(claim, assigned, utterance))
}

/** "ten metres of sixteen mil on the water": the length is of the same part as the size that it is a length of. */
function lengthOfSize(claim: Claim, all: readonly Claim[], { words }: Utterance): Claim {
  if (claim.kind !== "length") return claim
  const size = all.find((one) => one.kind === "conductor_csa" && one.from >= claim.to && one.from <= claim.to + 1)
  const isOf = size && (words[size.from - 1] === "of" || words[size.from] === "of")
  return isOf && size.subject && !size.doubt ? { ...claim, subject: size.subject } : claim
}

/** Whether parts are named, and all of them behind the claim. */
const isBeforeParts = (claim: Claim, mentions: readonly Mention[]): boolean =>
  mentions.length > 0 && mentions.every((one) => one.from >= claim.to)

/** "both of them are ten mil, the gas is … and the water's …": both, where just two are named; else it is asked. */
function ofLater(claim: Claim, mentions: readonly Mention[], { words }: Utterance): Claim[] {
  const items = [...new Set(mentions.map((one) => one.item).filter(isBond))]
  return items.length === 2 && words.slice(0, claim.from).includes("both")
    ? items.map((item) => ({ ...claim, subject: item }))
    : [ofWhich(claim, items)]
}

/** "gas or oil ten square": the two that it may be said of. */
function eitherOf(items: readonly Item[], mentions: readonly Mention[], { words }: Utterance): Item[] | null {
  const at = mentions.findIndex(
    (one, place) =>
      items.includes(one.item) && mentions[place - 1]?.to === one.from - 1 && words[one.from - 1] === "or",
  )
  return at > 0 ? [mentions[at - 1]!.item, mentions[at]!.item] : null
}

interface Around {
  utterance: Utterance
  context: Context
  mayBeGroup: boolean
  /** The sentence opens with a name that is no part we know. */
  isStrange: boolean
}

function owned(claim: Claim, items: readonly Item[], around: Around): Claim[] {
  if (items.length === 0) return [withCurrent(claim, around)]
  if (items.length === 1) return [{ ...claim, subject: items[0]! }]
  if (claim.kind === "conductor_csa" || claim.kind === "step_done")
    return items.map((item) => ({ ...claim, subject: item }))
  return [ofWhich(claim, items)]
}

const ofWhich = (claim: Claim, candidates: readonly Item[], because = "it was not said which of them"): Claim => ({
  ...claim,
  doubt: { candidates, because, kind: "service", isPlainValue: claim.doubt === undefined && claim.value !== null },
})

/** "sixteen mil earth" is the earthing conductor; a bond is called so only with its part. */
function namedEarth(claim: Claim, utterance: Utterance, mentions: readonly Mention[]): Item | null {
  const { words, tokens } = utterance
  if (claim.kind !== "conductor_csa") return null
  // "gas is on a ten mil earth": of the part that the very words name.
  const isOfPart = (one: Mention) => one.to <= claim.from && isOneBreath(one.to, claim.from, utterance)
  if (words[claim.to - 1] === "earth") return mentions.some(isOfPart) ? null : "earthing_conductor"
  // "the earth's in sixteen", where no part was named that it could be the earth of.
  const at = claim.from - 1
  const opens = at === 0 || /^(the|main|and)$/.test(words[at - 1] ?? "") || (at > 0 && isEdgeGap(tokens[at - 1]!.after))
  const isFree = mentions.length === 0 && words[at] === "earth's" && words[claim.from] === "in"
  return isFree && opens ? "earthing_conductor" : null
}

function withCurrent(claim: Claim, { utterance, context, mayBeGroup, isStrange }: Around): Claim {
  const group = mayBeGroup ? ofGroup(claim, utterance) : null
  if (group) return group
  if (isAfterLookalike(claim, utterance) || isStrange) return ofWhich(claim, [], "what was named is not a part to bond")
  return context.item ? { ...claim, subject: context.item } : claim
}

/** The claim with its doubt when it is said of parts that nobody named. */
function ofGroup(claim: Claim, utterance: Utterance): Claim | null {
  const isPlural = utterance.words.slice(claim.from, claim.to + 1).includes("bonds")
  if (claim.kind === "conductor_csa" && isPlural) return ofWhich(claim, [], "it was not said which bonds")
  const near = utterance.words.slice(Math.max(0, claim.from - 2), claim.from + 1)
  if (claim.kind === "conductor_csa" && near.includes("both")) return ofWhich(claim, [], "it was not said which bonds")
  if (takesGroup(claim, utterance)) return ofWhich(claim, [])
  // "all bonded in ten": bonds that nobody named.
  if (claim.kind === "conductor_csa" && near.at(-2) === "all" && /^(bonded|wired)$/.test(near.at(-1) ?? ""))
    return ofWhich(claim, [], "it was not said which bonds")
  // "all" may be "oil", and of what "all" is was not said.
  if (claim.kind === "conductor_csa" && /^all('s)?$/.test(utterance.words[claim.from]!))
    return ofWhich(claim, ["oil"], "it was not said which bonds")
  return null
}

/** "oil tank, sixteen square": something else that carries a part's name was named first, so the current part is not meant. */
const isAfterLookalike = (claim: Claim, utterance: Utterance): boolean =>
  (utterance.grammars & parts) !== 0 &&
  utterance.islands.some(
    (one) =>
      one.rule === "parts.notPart" &&
      one.to <= claim.from &&
      /^(water|gas|oil|heating)$/.test(utterance.words[one.from] ?? ""),
  )

function itemsFor(claim: Claim, mentions: readonly Mention[], utterance: Utterance): Item[] {
  if (mentions.length === 0) return []
  const isShared = ["both", "all", "each"].includes(utterance.words[claim.from - 1] ?? "") || isOfBoth(claim, utterance)
  const before = mentions.filter((one) => one.to <= claim.from && isBond(one.item))
  if (isShared && new Set(before.map((one) => one.item)).size > 1) return [...new Set(before.map((one) => one.item))]
  const inside = mentions.find((one) => one.from >= claim.from && one.to <= claim.to)
  const chosen =
    inside ??
    postposed(claim, mentions, utterance) ??
    mentions.findLast((one) => one.to <= claim.from) ??
    later(claim, mentions, utterance)
  if (!chosen) return []
  return [...new Set(mentions.filter((one) => one.group === chosen.group).map((one) => one.item))]
}

/** "labels on both", "the clamps are both on", "I have the two of them labelled" */
const isOfBoth = (claim: Claim, { words }: Utterance): boolean =>
  claim.kind === "step_done" &&
  (/\b(both|baith)\b/.test(words.slice(claim.from, claim.to + 2).join(" ")) ||
    /\b(both|two|baith) of (them|'em)( (is|are|all|now))*$/.test(words.slice(0, claim.from).join(" ")))

function postposed(claim: Claim, mentions: readonly Mention[], utterance: Utterance): Mention | undefined {
  if (mentions.length === 0) return undefined
  let at = claim.to
  while (
    at < utterance.tokens.length &&
    utterance.tokens[at - 1]!.after === "space" &&
    postWords.has(utterance.words[at]!)
  )
    at += 1
  if (at > 0 && at < utterance.tokens.length && utterance.tokens[at - 1]!.after !== "space") return undefined
  const found = mentions.find((one) => one.from === at)
  const isNoun =
    found !== undefined &&
    at === claim.to &&
    endsClause(found, utterance) &&
    !mentions.some((one) => one.to <= claim.from && !isPartedBetween(one.to, claim.from, utterance))
  return found && (at > claim.to || isNoun || found.item === "earthing_conductor" || isBondWord(found, utterance))
    ? found
    : undefined
}

/** "sixteen mil water, ten mil gas": a part right behind its value, with a pause after it. */
const endsClause = (mention: Mention, utterance: Utterance) =>
  mention.to >= utterance.tokens.length || utterance.tokens[mention.to - 1]!.after !== "space"

/** Whether neither a pause nor an "and" stands between two places. */
const isOneBreath = (from: number, to: number, utterance: Utterance) =>
  !isPartedBetween(from, to, utterance) && !utterance.words.slice(from, to).includes("and")

const isPartedBetween = (from: number, to: number, utterance: Utterance) =>
  utterance.tokens.slice(from - 1, to).some((token) => isEdgeGap(token.after))

const isBondWord = (mention: Mention, utterance: Utterance) =>
  utterance.islands.some((one) => one.from === mention.from && tagValue(one, "bond") !== undefined)

/** A part named later counts back only within the sentence. */
function later(claim: Claim, mentions: readonly Mention[], utterance: Utterance): Mention | undefined {
  const found = mentions.find((one) => one.from >= claim.to && isBond(one.item))
  const ends = utterance.tokens
    .slice(claim.to - 1, (found?.from ?? claim.to) - 1)
    .some((token) => isSentenceEnd(token.after))
  return ends ? undefined : found
}
