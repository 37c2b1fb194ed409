/**
 * The last word on what may be written: two values for one field, a range, a doubtful word or a bare number become a
 * question, and the field in doubt is never written.
 */
import type { Fact, RecordedFact } from "../facts/Fact"
import type { Ask, Context } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import { type Claim, isMeasured } from "./Claim"
import { isSold } from "./decideQuantity"
import { isEdgeGap } from "./Token"
import { type Island, tagValue, type Utterance } from "./Utterance"

export interface Settled {
  /** Claims that may be written. */
  sure: readonly Claim[]
  ask: Ask | null
}

const nothingSettled: Settled = { sure: [], ask: null }

/** Parts sure from doubtful. */
export function settleClaims(claims: readonly Claim[], utterance: Utterance, context: Context): Settled {
  if (claims.length === 0) return nothingSettled
  const [only] = claims
  if (claims.length === 1 && only!.kind !== "field")
    return only!.doubt ? { sure: [], ask: askFor(claims, []) } : { sure: claims, ask: askFor([], claims) }
  const noNull = dropNullReading(claims, utterance)
  const ranged = joinRanges(noNull, utterance).filter(
    (one) => !(one.kind === "field" && one.doubt?.because === rangeDoubt && !context.asked),
  )
  const placed = placeBareNumbers(ranged, utterance, context)
  const resolved = dropResolvedDoubts(placed)
  const settled = doubtConflicts(resolved)
  const doubts = settled.filter((one) => one.doubt)
  const sure = settled.filter((one) => !one.doubt && !doubts.some((doubt) => isSameField(doubt, one)))
  return { sure: unique(dropBareOverRange(sure)), ask: askFor(doubts, dropBareOverRange(sure)) }
}

/** "leads nulled, zero point zero zero" says what the null left, not what a bond reads. */
function dropNullReading(claims: readonly Claim[], utterance: Utterance): Claim[] {
  const nulled = claims.find((one) => one.kind === "step_done" && one.value === "leads_nulled")
  if (!nulled) return [...claims]
  return claims.filter(
    (one) =>
      !(
        one.kind === "resistance" &&
        one.from >= nulled.from &&
        (one.value === 0 || isLeadReading(one, nulled, utterance))
      ),
  )
}

/** "nulled the leads at nought point four one" tells what the leads have. */
function isLeadReading(claim: Claim, nulled: Claim, utterance: Utterance): boolean {
  const between = utterance.words.slice(nulled.to, claim.from)
  const isParted = utterance.tokens.slice(nulled.to - 1, claim.from).some((token) => isEdgeGap(token.after))
  return (
    !isParted &&
    between.length < 4 &&
    between.every((word) => /^(at|to|with|from|out|of|on|they|were|was|which|it|is)$/.test(word)) &&
    between.length > 0
  )
}

const isSameField = (one: Claim, other: Claim): boolean =>
  (one.doubt?.kind ?? one.kind) === other.kind &&
  (one.kind !== "step_done" || one.value === other.value) &&
  (one.subject === undefined || other.subject === undefined || one.subject === other.subject)

/** "fourteen to sixteen metres", "between … and …": a range holds no value. */
function joinRanges(claims: readonly Claim[], utterance: Utterance): Claim[] {
  const joined: Claim[] = []
  for (const claim of claims) {
    const before = joined.at(-1)
    if (before && isRange(before, claim, utterance)) joined[joined.length - 1] = rangeOf(before, claim)
    else joined.push(claim)
  }
  return joined
}

function isRange(first: Claim, second: Claim, utterance: Utterance): boolean {
  const isNumber = (claim: Claim) => isMeasured(claim.kind) || claim.kind === "field"
  if (!isNumber(first) || !isNumber(second)) return false
  // "fifteen or fifty metres": the unit at the end is of both.
  const isOneField = first.kind === second.kind || first.kind === "field" || second.kind === "field" || first.isBare
  if (!isOneField) return false
  const between = utterance.words.slice(first.to, second.from)
  const gap = utterance.tokens[first.to - 1]?.after
  if (between.length === 0) return gap === "dash" || gap === "hyphen"
  return (
    between.length < 4 &&
    ["to", "or", "till"].includes(between[0]!) &&
    between
      .slice(1)
      .every((word) => ["maybe", "perhaps", "possibly", "even", "about", "say", "was", "is", "it"].includes(word))
  )
}

const rangeDoubt = "a range is not a value"

function rangeOf(first: Claim, second: Claim): Claim {
  const kept = second.kind === "field" ? first : second
  const candidates = [first, second].flatMap((one) =>
    one.value === null ? (one.doubt?.candidates ?? []) : [one.value],
  )
  return { ...kept, from: first.from, to: second.to, doubt: { candidates, because: rangeDoubt } }
}

/** Numbers that no field claims: asked about when nothing but them and a part was said, else left alone. */
function placeBareNumbers(claims: readonly Claim[], utterance: Utterance, context: Context): Claim[] {
  const bare = claims.filter((one) => one.kind === "field")
  const first = bare[0]
  if (!first) return [...claims]
  const others = claims.filter((one) => one.kind !== "field")
  const isClear = utterance.leftovers.every(
    (leftover) => leftover === null || leftover === "skippable" || leftover === "neutral",
  )
  const hasPart = utterance.islands.some((one) => one.rule === "parts.part" || one.rule === "parts.earthing")
  // "aye but the gas is ten" over a read-back of the water: the yes is of the one, the number of the other.
  const isPlain =
    isClear &&
    !utterance.islands.some(
      (one) =>
        /^(quantity\.foreign|guards|answers(?!\.undo)|steps\.thing|distance\.place|parts\.notPart)/.test(one.rule) &&
        !isBareNo(one, utterance) &&
        !(hasPart && context.asked === "confirm" && one.rule === "answers.confirm"),
    )
  if (!isPlain) return others
  const values = bare.flatMap((one) => one.doubt?.candidates ?? [])
  const sizes = values.filter((one) => typeof one === "number" && isSold(one))
  const isFar = values.every((one) => typeof one === "number" && one >= 200)
  const kind = hasPart && sizes.length > 0 ? "conductor_csa" : isFar ? "distance" : "field"
  const candidates = kind === "conductor_csa" ? sizes : values
  // "water ten mil, oil ten": the ten behind the oil is not the water's said again.
  const named = utterance.islands.findLast((one) => one.rule === "parts.part" && one.to <= first.from)
  const subject = first.subject ?? (named ? (tagValue(named, "item") as Item) : context.item)
  return [
    ...others,
    {
      ...first,
      kind,
      ...(subject ? { subject } : {}),
      doubt: { candidates, because: "it was not said what that number is" },
    },
  ]
}

/** "water, four, no, six": the no only puts the number right. */
const isBareNo = ({ rule, from, to }: Island, { words, numbers }: Utterance): boolean =>
  rule === "answers.deny" &&
  /^((ah|oh|och) )?no$/.test(words.slice(from, to).join(" ")) &&
  numbers.some((one) => one.to <= from) &&
  numbers.some((one) => one.from >= to)

/** "0.5 ohms, yes nought point five": the sure form takes the doubt from the other. */
function dropResolvedDoubts(claims: readonly Claim[]): Claim[] {
  const isShadow = (one: Claim) => one.isDenied && claims.some((other) => !other.isDenied && other.kind === one.kind)
  return claims.filter(
    (one) =>
      !isShadow(one) &&
      (!one.doubt ||
        !claims.some(
          (other) => !other.doubt && isSameField(one, other) && other.value === one.value && other.value !== null,
        )),
  )
}

function doubtConflicts(claims: readonly Claim[]): Claim[] {
  const settled: Claim[] = []
  const spelled = claims.find((one) => one.isSpelled)
  for (const claim of claims.filter((one) => !spelled || one === spelled || one.kind !== spelled.kind)) {
    const at = settled.findIndex(
      (one) =>
        one.kind === claim.kind && one.kind !== "step_done" && one.subject === claim.subject && isDifferent(one, claim),
    )
    if (at === -1) settled.push(claim)
    else settled[at] = conflictOf(settled[at]!, claim)
  }
  return settled
}

function isDifferent(one: Claim, other: Claim): boolean {
  if (one.doubt && other.doubt) return true
  if (one.value === null || other.value === null)
    return one.value !== other.value && !isOverRange(one) && !isOverRange(other)
  return one.value !== other.value || one.qualifier !== other.qualifier
}

const isOverRange = (claim: Claim) => claim.kind === "resistance" && claim.value === null && claim.qualifier === ">"

function conflictOf(one: Claim, other: Claim): Claim {
  const values = [one, other].flatMap((claim) => claim.doubt?.candidates ?? (claim.value === null ? [] : [claim.value]))
  return {
    ...one,
    doubt: { ...one.doubt, candidates: [...new Set(values)], because: one.doubt?.because ?? "two values were said" },
  }
}

/** "over range, greater than 99.9 k" is one reading, the one with the limit. */
function dropBareOverRange(claims: readonly Claim[]): Claim[] {
  return claims.filter(
    (one) =>
      !isOverRange(one) ||
      !claims.some((other) => other.kind === "resistance" && other.value !== null && other.subject === one.subject),
  )
}

function askFor(doubts: readonly Claim[], sure: readonly Claim[]): Ask | null {
  const doubt = doubts[0]
  if (doubt?.doubt) {
    const { because, kind } = doubt.doubt
    // "⅓" is no value of anything: it is asked about, and cannot be offered.
    const candidates = doubt.doubt.candidates.filter((one) => !Number.isNaN(one))
    const values = doubts.filter((one) => one.doubt?.isPlainValue).map(withoutSubject)
    return {
      kind: kind ?? doubt.kind,
      ...(candidates.length > 0 ? { candidates } : {}),
      because,
      ...(kind === "service" && values.length > 0 ? { values } : {}),
    }
  }
  const over = sure.find(isOverRange)
  return over ? { kind: "resistance", because: "it is over range: what is the most the meter can show?" } : null
}

const withoutSubject = ({ subject: _, ...claim }: Claim) => factOf(claim) as RecordedFact

const keyOf = (claim: Claim) => JSON.stringify([claim.kind, claim.value, claim.qualifier, claim.subject])

function unique(claims: readonly Claim[]): readonly Claim[] {
  if (claims.length < 2) return claims
  const keys = claims.map(keyOf)
  return claims.filter((_, at) => keys.indexOf(keys[at]!) === at)
}

/** A claim as the fact it stands for. */
export function factOf(claim: Claim): Fact {
  const { kind, value, unit, qualifier, subject } = claim
  const fact: Record<string, unknown> = { kind, value }
  if (unit) fact.unit = unit
  if (qualifier) fact.qualifier = qualifier
  if (subject) fact.subject = subject
  return fact as Fact
}
