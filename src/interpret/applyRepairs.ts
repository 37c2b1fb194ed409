/**
 * A marked repair leaves only the final value, however the engine cut the sentences. Without a mark nothing is
 * repaired: two values for one field are asked about.
 */
import { type Claim, isMeasured, type MeasuredKind } from "./Claim"
import { decideQuantity } from "./decideQuantity"
import { bitsOf } from "./GrammarBits"
import { isEdgeGap } from "./Token"
import { type Island, tagValue, type Utterance } from "./Utterance"
import { withoutPast } from "./withoutPast"

const repairing = bitsOf("repairs", "answers", "guards")
const noMarks: readonly Island[] = []

const wipes =
  /^(scratch|scrap|strike|delete|cancel|forget|ignore|undo|rub|disregard|kill|remove|erase|lose|wipe|scrub|bin|get rid|drop|clear)/

/** Places where what follows replaces what went before. */
export function repairMarks(utterance: Utterance): readonly Island[] {
  if ((utterance.grammars & repairing) === 0) return noMarks
  return utterance.islands.filter((one) => {
    if ((one.grammar & repairing) === 0) return false
    const text = textOf(utterance, one)
    if (one.rule === "answers.repeat")
      return text.endsWith("beg pardon") && one.from > 0 && one.to < utterance.tokens.length
    if (/^(no|nope|nae|naw)$/.test(text)) return mayRepair(utterance, one)
    if (text === "make it" && /^i('d)?$/.test(utterance.words[one.from - 1] ?? "")) return false
    if (one.rule === "repairs.repair" || one.rule === "repairs.no") return true
    if (one.rule === "answers.deny")
      return (
        /^((ah |oh )?no|nope|nah|wrong|not right|that's wrong|negative)\b/.test(text) ||
        isAfterthought(utterance, one, text)
      )
    return one.rule === "answers.undo" && wipes.test(text)
  })
}

/** "label's on… oh it's not, it's dropped": a clause of its own that takes back what was just told. */
const isAfterthought = (utterance: Utterance, { from, to }: Island, text: string): boolean =>
  /^(it's not|it isn't|it is not|it isnae|it's no)$/.test(text) &&
  from > 0 &&
  isEdgeGap(utterance.tokens[from - (utterance.words[from - 1] === "oh" ? 2 : 1)]?.after ?? "space") &&
  (to >= utterance.tokens.length || isEdgeGap(utterance.tokens[to - 1]!.after))

/** A bare no repairs before a pause or a value; before any other word it only says that something is not there. */
function mayRepair(utterance: Utterance, island: Island): boolean {
  if (island.to >= utterance.tokens.length || isEdgeGap(utterance.tokens[island.to - 1]!.after)) return true
  if (
    utterance.words[island.from - 1] !== "and" &&
    /\bnot\b|n't/.test(utterance.words.slice(island.to, island.to + 3).join(" "))
  )
    return true
  const next = utterance.islands.find(
    (one) => one.from === island.to || (one.from === island.to + 1 && utterance.leftovers[island.to] === "skippable"),
  )
  return (
    next !== undefined &&
    /^(quantity|size|length|distance|resistance|supply|arrangement|parts|repairs|answers)\./.test(next.rule)
  )
}

const textOf = (utterance: Utterance, island: Island) => utterance.words.slice(island.from, island.to).join(" ")

/** Claims after repairs, in order. */
export function applyRepairs(claims: readonly Claim[], utterance: Utterance, isReadBack: boolean): readonly Claim[] {
  let left = withoutPast(claims, utterance)
  for (const mark of repairMarks(utterance))
    left =
      !isReadBack && /should (be|have)|(wants|needs) to be/.test(textOf(utterance, mark))
        ? wishAt(left, mark)
        : repairAt(left, mark, utterance)
  return left
}

function repairAt(claims: readonly Claim[], mark: Island, utterance: Utterance): Claim[] {
  const before = claims.filter((one) => one.to <= mark.from && one.kind !== "service")
  const next = claims.find((one) => one.from >= mark.to && one.kind !== "service")
  const last = before.at(-1)
  if (!last) return [...claims]
  const text = textOf(utterance, mark)
  // "ten mil, no, metres": the unit alone is put right, and its claim asks with the number.
  if (next?.value === null && last.value !== null && next.doubt?.candidates.includes(last.value))
    return claims.filter((one) => one !== last)
  if (next && mayDeny(text, mark, utterance)) return eitherOf(claims, last, next, utterance)
  if (!next && isPartBehind(mark, utterance) && !deniesBehind(mark, utterance)) return [...claims]
  if (!next) return endRepair(claims, meantBy(mark, before, utterance) ?? last, text, mark, utterance)
  const sized = next.kind === "field" ? listBefore(before, mark, utterance) : null
  if (sized) {
    const number = numberIn(next, utterance)
    const again =
      number && decideQuantity({ kind: sized.kind, number, hasUnit: true, isAsked: true }, next.from, next.to)
    return again
      ? claims.filter((one) => !sized.claims.includes(one)).map((one) => (one === next ? again : one))
      : [...claims]
  }
  if (before.some((one) => one.kind === next.kind)) return withoutReplaced(claims, before, next, utterance)
  if (next.kind === "field" && isMeasured(last.kind)) {
    const number = numberIn(next, utterance)
    if (!number) return [...claims]
    const moved = decideQuantity({ kind: last.kind, number, hasUnit: true, isAsked: true }, next.from, next.to)
    return claims.filter((one) => one !== last).map((one) => (one === next ? moved : one))
  }
  if (isUnfinishedPlace(last, next, mark, utterance)) return claims.filter((one) => one !== last)
  return repairOtherKind(claims, last, next, utterance, text)
}

/** "tails are sixteen, twenty-five, beg pardon, twenty-five": a measure and the bare numbers said for it, and no part between. */
function listBefore(
  before: readonly Claim[],
  mark: Island,
  { islands }: Utterance,
): { kind: MeasuredKind; claims: readonly Claim[] } | null {
  const at = before.findLastIndex((one) => one.kind !== "field")
  const first = before[at]
  if (!first || !isMeasured(first.kind) || at === before.length - 1) return null
  if (islands.some((one) => one.said.has("item") && one.from >= first.to && one.to <= mark.from)) return null
  return { kind: first.kind, claims: before.slice(at) }
}

const pause =
  /^(sorry|wait|hang on|hold on|hang about|hold up|hang fire|actually|in fact|excuse me|pardon me|damn|oops|whoops|bugger)$/

/** A repair between values of two kinds: one may stand for the other, or both may be meant. */
function repairOtherKind(
  claims: readonly Claim[],
  last: Claim,
  next: Claim,
  utterance: Utterance,
  text: string,
): Claim[] {
  if (isOtherUnit(last, next) && !meansTheUnit.test(text)) return eitherOf(claims, last, next, utterance)
  if (last.kind === "field" || isOtherUnit(last, next)) return claims.filter((one) => one !== last)
  if (wipes.test(text)) return claims.map((one) => (one === last ? withdrawn(one) : one))
  return pause.test(text) ? [...claims] : claims.map((one) => (one === last ? doubtful(one) : one))
}

/** "seven metres from the, no, seven hundred mil from the meter": the first was going to be the same distance. */
const isUnfinishedPlace = (last: Claim, next: Claim, mark: Island, { words }: Utterance): boolean =>
  next.kind === "distance" &&
  last.kind === "length" &&
  /^(off|from|past|above|below|to)( the)?$/.test(words.slice(last.to, mark.from).join(" "))

/** What stood before the repair for the same field, and where that can be told for the same part, is gone. */
function withoutReplaced(
  claims: readonly Claim[],
  before: readonly Claim[],
  next: Claim,
  utterance: Utterance,
): Claim[] {
  const replaced = before.filter(
    (one) => one.kind === next.kind && (next.kind !== "step_done" || one === before.at(-1)),
  )
  const part = partOf(next, utterance)
  const ofPart = replaced.filter((one) => part !== undefined && partOf(one, utterance) === part)
  const lastPart = partOf(replaced.at(-1) ?? next, utterance)
  const gone = ofPart.length > 0 ? ofPart : replaced.filter((one) => partOf(one, utterance) === lastPart)
  return claims
    .filter((one) => !gone.includes(one))
    .map((one) => (one === next ? withBound(one, gone.at(-1), utterance) : one))
}

/** "greater than two, no, two hundred megs": a number that was begun again keeps its bound; another one is asked about. */
function withBound(next: Claim, gone: Claim | undefined, utterance: Utterance): Claim {
  const { islands, words } = utterance
  const island = gone && islands.find((one) => one.from <= gone.from && gone.from < one.to)
  const bound = island && (tagValue(island, "qualifier") as Claim["qualifier"])
  if (!gone || !bound || next.qualifier || next.doubt) return next
  const wordOf = (claim: Claim) => words[numberIn(claim, utterance)?.from ?? -1]
  if (wordOf(next) !== undefined && wordOf(next) === wordOf(gone)) return { ...next, qualifier: bound }
  const candidates = next.value === null ? [] : [next.value]
  return { ...next, doubt: { candidates, because: "more or less than that may still be meant" } }
}

/**
 * The part that is named right behind the claim, or last before it: "water in ten, gas in ten, no, water in sixteen" leaves
 * the gas alone.
 */
function partOf({ from, to }: Claim, { islands, words, tokens }: Utterance): string | undefined {
  const parts = islands.filter((one) => one.rule === "parts.part")
  const isBehind = (one: Island) =>
    one.from >= to &&
    tokens[to - 1]!.after === "space" &&
    words.slice(to, one.from).every((word) => /^(on|for|to|the)$/.test(word))
  const named = parts.find(isBehind) ?? parts.findLast((one) => one.to <= from)
  return named && tagValue(named, "item")
}

/** The same number with another unit. */
const isOtherUnit = (last: Claim, next: Claim): boolean =>
  last.value === next.value && last.kind !== next.kind && isMeasured(next.kind) && isMeasured(last.kind)

/** "twenty five metres, I mean twenty five mil": only the unit can be what is put right. */
const meansTheUnit = /^(no |sorry )?(i mean|i meant|i should say|or rather|correction)$/

/** Scots "ten, no sixteen" says that it is not sixteen; only a pause behind the no makes it a repair for certain. */
function mayDeny(text: string, mark: Island, utterance: Utterance): boolean {
  if (!/^(no|nae|naw)$/.test(text)) return false
  return isEdgeGap(utterance.tokens[mark.from - 1]!.after) && !isEdgeGap(utterance.tokens[mark.to - 1]!.after)
}

/** The number that a claim was made of. */
const numberIn = ({ from, to }: Claim, { numbers }: Utterance) =>
  numbers.find((one) => one.from >= from && one.to <= to)

function eitherOf(claims: readonly Claim[], last: Claim, next: Claim, utterance: Utterance): Claim[] {
  const number = numberIn(next, utterance)
  const candidates = [last.value, next.value ?? number?.value ?? null].filter((one) => one !== null)
  // A bare number behind the no is of the kind that stood before it.
  const kept = next.kind === "field" ? last : next
  return claims
    .filter((one) => one === kept || (one !== last && one !== next))
    .map((one) => (one === kept ? { ...one, doubt: { candidates, because: "the no may belong to either" } } : one))
}

/** "it was ten, should be sixteen": what ought to be is not what is, unless a read-back is put right by it. */
function wishAt(claims: readonly Claim[], mark: Island): Claim[] {
  const next = claims.find((one) => one.from >= mark.to)
  const last = claims.findLast((one) => one.to <= mark.from && one.kind === next?.kind)
  const candidates = [last?.value, next?.value].filter((one) => one !== undefined && one !== null)
  return claims
    .filter((one) => one !== last)
    .map((one) =>
      one === next ? { ...one, doubt: { candidates, because: "what ought to be may not be what is" } } : one,
    )
}

/** "ten mil on the gas, no, on the water": only the part is put right. */
const isPartBehind = (mark: Island, utterance: Utterance): boolean =>
  utterance.islands.some(
    (one) =>
      one.rule === "parts.part" &&
      one.from >= mark.to &&
      (one.from <= mark.to + 2 || /^(that|it) was the$/.test(utterance.words.slice(mark.to, one.from).join(" "))),
  )

/** "no, the water label's not on" takes a step back, and "no, on the water" only moves it. */
const deniesBehind = (mark: Island, { words }: Utterance): boolean =>
  words.slice(mark.to, mark.to + 5).some((word) => /^not$|n't$|nae$/.test(word))

/** "label on, clamp on, no, label's not on": the thing named behind the no is the one taken back, of its own part. */
function meantBy(mark: Island, before: readonly Claim[], utterance: Utterance): Claim | undefined {
  const thing = utterance.islands.find((one) => one.rule === "steps.thing" && one.from >= mark.to)
  const name = thing && tagValue(thing, "thing")
  if (!thing || !name) return undefined
  const meant = before.filter((one) => one.kind === "step_done" && String(one.value).startsWith(name))
  const part = isPartBehind(mark, utterance)
    ? partOf({ ...before[0]!, from: thing.from, to: thing.to }, utterance)
    : null
  return meant.findLast((one) => partOf(one, utterance) === part) ?? meant.at(-1)
}

/** A repair that nothing follows: the value before it no longer stands. */
function endRepair(claims: readonly Claim[], last: Claim, text: string, mark: Island, utterance: Utterance): Claim[] {
  const rest = utterance.words.slice(mark.to).length
  if (wipes.test(text) && rest === 0) return claims.map((one) => (one === last ? withdrawn(one) : one))
  if (last.kind === "step_done" && (/not|n't|nae/.test(text) || deniesBehind(mark, utterance)))
    return claims.filter((one) => one !== last)
  // "thirty, thirteen rather": the last of two is meant.
  const isOfLast = /^(rather|i said|i mean|i meant|i should say)$/.test(text)
  if (isOfLast) return claims.filter((one) => one === last || one.kind !== last.kind || one.to > last.from)
  const isLight = /^(sorry|actually|in fact|excuse me)$/.test(text)
  return isLight ? [...claims] : claims.map((one) => (one === last ? doubtful(one) : one))
}

const withdrawn = (claim: Claim): Claim => ({ ...claim, doubt: { candidates: [], because: "that was taken back" } })
const doubtful = (claim: Claim): Claim => ({
  ...claim,
  doubt: { candidates: claim.value === null ? [] : [claim.value], because: "that may have been taken back" },
})
