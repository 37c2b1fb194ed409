/** What the measure-like phrases of an utterance claim, one phrase at a time, with the open question as their context. */
import type { Context } from "../facts/Interpretation"
import type { Qualifier } from "../facts/Quantity"
import { reading } from "./AtomRow"
import { type Claim, type ClaimDoubt, isMeasured, type MeasuredKind } from "./Claim"
import { decideQuantity, isSold, shifted } from "./decideQuantity"
import type { NumberReading } from "./NumberReading"
import { isEdgeGap } from "./Token"
import { hasTag, type Island, taggedNumbers, tagValue, type Utterance } from "./Utterance"

interface Site {
  utterance: Utterance
  island: Island
  asked: string | undefined
  /** The field of what was just read back. */
  readback: string | undefined
}

/** Claims of every phrase that holds a measure. */
export function claimQuantities(utterance: Utterance, context: Context): Claim[] {
  return utterance.islands.flatMap((island) => {
    const claim = claimOf({ utterance, island, asked: context.asked, readback: context.readback?.kind })
    return claim ? [claim] : []
  })
}

function claimOf(site: Site): Claim | null {
  switch (site.island.rule) {
    case "size.size":
      return claimSize(site, "conductor_csa")
    case "size.neutral":
      return claimSize(site, "neutral_csa")
    case "quantity.mil":
      return claimMil(site)
    case "quantity.imperial":
      return claimImperial(site)
    case "length.length":
      return claimLength(site)
    case "length.centimetres":
      return claimCentimetres(site)
    case "distance.distance":
      return claimDistance(site)
    case "resistance.reading":
      return claimReading(site)
    case "resistance.overRange":
      return overRange(site)
    case "resistance.nothingShown":
      return site.asked === "resistance" || follows(site, "resistance.shownAlone")
        ? doubted(site, "resistance", [], "nothing may be nought or over range")
        : null
    case "supply.fuse":
      return measure(site, "fuse_rating", { hasUnit: true })
    case "supply.current":
      return claimCurrent(site)
    case "quantity.vague":
      return claimVague(site)
    case "quantity.lost":
      return claimLost(site)
    case "quantity.bare":
      return claimBare(site)
    default:
      return null
  }
}

/** Amps that nobody called a fuse: the fuse when it was asked, asked about when the rest is about the supply. */
function claimCurrent(site: Site): Claim | null {
  if (site.asked === "fuse_rating" || follows(site, "supply.fuseAlone"))
    return measure(site, "fuse_rating", { hasUnit: true })
  const isSupply = site.utterance.islands.some((one) =>
    /^(arrangement\.arr|size\.neutral|supply\.polarity$)/.test(one.rule),
  )
  const value = numberOf(site)?.value
  return isSupply && value !== undefined
    ? doubted(site, "fuse_rating", [value], "it was not said what the amps are of")
    : null
}

/** "a couple of metres" is no length. */
function claimVague(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit")
  const kind =
    unit === "m" ? (site.asked === "distance" ? "distance" : "length") : isMeasured(site.asked) ? site.asked : null
  const isCouple = site.utterance.words.slice(site.island.from, site.island.to).includes("couple")
  if (!kind || (site.asked !== kind && unit !== "m")) return null
  return doubted(site, kind, isCouple && kind === "length" ? [2] : [], "that is no exact number")
}

/** "metres, clamp on": the number before the unit is missing. */
function claimLost(site: Site): Claim | null {
  const { utterance, island } = site
  const gap = utterance.tokens[island.to - 1]!.after
  const opens = island.from === 0 || isEdgeGap(utterance.tokens[island.from - 1]!.after)
  const isTorn =
    site.asked === "conductor_csa" &&
    utterance.leftovers.includes("unknown") &&
    /^(mil|square|mm)$/.test(utterance.words[island.from]!)
  if (isTorn) return doubted(site, "conductor_csa", [], "the number was not heard")
  if (/^(mil|square|mm)$/.test(utterance.words[island.from]!)) return null
  const last = utterance.islands.filter((one) => one.to <= island.from && one.rule !== "answers.deny").at(-1)
  const isUnitRepair =
    utterance.words[island.from - 1] === "no" && last !== undefined && numberUnder(site, last) !== undefined
  if (!(opens && (isEdgeGap(gap) || island.to === utterance.tokens.length)) && !isUnitRepair) return null
  const kind =
    ({ metres: "length", ohms: "resistance" } as const)[utterance.words[island.from]!] ??
    (site.asked === "distance" ? "distance" : "conductor_csa")
  const number = isUnitRepair ? numberUnder(site, last!) : undefined
  return doubted(site, kind, number ? [number.value] : [], "the number was not heard")
}

const numberUnder = ({ utterance }: Site, island: Island) => taggedNumbers(utterance, island, "n")[0]

const numberOf = (site: Site, name = "n"): NumberReading | undefined =>
  taggedNumbers(site.utterance, site.island, name)[0]

const follows = ({ utterance, island }: Site, rule: string): boolean =>
  utterance.islands.some((one) => one.rule === rule && one.to <= island.from)

function doubted(site: Site, kind: Claim["kind"], candidates: ClaimDoubt["candidates"], because: string): Claim {
  return {
    kind,
    value: null,
    from: site.island.from,
    to: site.island.to,
    isBare: false,
    doubt: { candidates, because },
  }
}

interface Measure {
  hasUnit: boolean
  shift?: number
  number?: NumberReading
}

function measure(site: Site, kind: MeasuredKind, how: Measure): Claim | null {
  const number = how.number ?? numberOf(site)
  if (!number) return null
  const { from, to } = site.island
  // Digits one by one are how a refused number is said again.
  const plain =
    number.shape === "digits" && kind !== "resistance" && (site.readback === kind || isSaidBefore(site, number))
      ? { ...number, shape: "whole" as const }
      : number
  const claim = decideQuantity({ kind, isAsked: site.asked === kind, ...how, number: plain }, from, to)
  return {
    ...doubtSoundAlike(site, claim),
    isBare: isBare(site, number, how),
    ...(plain === number ? {} : { isSpelled: true }),
  }
}

/** A number that only the question or a small word gives a field to. */
function isBare({ utterance, island }: Site, number: NumberReading, { hasUnit }: Measure): boolean {
  if (island.rule === "quantity.bare") return true
  const isOpenIn =
    hasTag(island, "cue") && utterance.words[island.from] === "in" && tagValue(island, "unit") === undefined
  return isOpenIn || (island.rule === "resistance.reading" && !hasUnit && number.lead === null)
}

/** "fifteen, one five": the same number again, digit by digit, settles how it sounded. */
const isSaidBefore = ({ utterance }: Site, number: NumberReading): boolean =>
  utterance.numbers.some((one) => one.to <= number.from && one.shape === "whole" && one.value === number.value)

/** A sound-alike in the phrase is written only when it may be. */
function doubtSoundAlike({ island, asked }: Site, claim: Claim): Claim {
  const isAllowed = island.doubt === 0 || (island.doubt === 1 && asked === claim.kind)
  if (isAllowed || claim.doubt) return claim
  return {
    ...claim,
    doubt: { candidates: claim.value === null ? [] : [claim.value], because: "a word may have been misheard" },
  }
}

function claimSize(site: Site, kind: "conductor_csa" | "neutral_csa"): Claim | null {
  const unit = tagValue(site.island, "unit")
  if (unit === "gauge" || unit === "number")
    return unit === "gauge" || isMeasured(site.asked)
      ? doubted(site, kind, [], "a wire gauge is not square millimetres")
      : null
  return measure(
    site,
    kind === "conductor_csa" && site.asked === "neutral_csa" && !hasTag(site.island, "cue") ? "neutral_csa" : kind,
    { hasUnit: true },
  )
}

function claimMil(site: Site): Claim | null {
  const number = numberOf(site)
  if (!number) return null
  const { asked } = site
  if (asked === "conductor_csa" || asked === "neutral_csa") return measure(site, asked, { hasUnit: true })
  if (asked === "distance") return measure(site, "distance", { hasUnit: true })
  if (ofTails(site)) return measure(site, "neutral_csa", { hasUnit: true })
  if (number.doubt) return measure(site, "conductor_csa", { hasUnit: true })
  if (besideBond(site)) return measure(site, "conductor_csa", { hasUnit: true })
  // Small sizes are sizes; a large one may as well be millimetres of distance.
  if (isSold(number.value) && number.value <= 35) return measure(site, "conductor_csa", { hasUnit: true })
  const kind = number.value >= 50 ? "distance" : "conductor_csa"
  return doubted(
    site,
    kind,
    [number.value].filter((value) => kind === "distance" || isSold(value)),
    "a size or a distance",
  )
}

/** "ten metres of sixteen": what a length is of is a size. */
function isOfLength({ utterance, island }: Site): boolean {
  const isAfter = utterance.islands.some(
    (one) => one.rule === "length.length" && one.to >= island.from - 1 && one.to <= island.from,
  )
  return isAfter && utterance.words[island.from - 1] === "of"
}

/** A bond named right beside the number makes it a size. */
function besideBond({ utterance, island }: Site): boolean {
  return utterance.islands.some((one) => hasTag(one, "bond") && (one.from === island.to || one.to === island.from))
}

/** "meter tails, twenty five mil": the last thing named is what the size is of. */
function ofTails({ utterance, island }: Site): boolean {
  const named = utterance.islands
    .filter((one) => one.to <= island.from && /^(parts\.|size\.tailsAlone)/.test(one.rule))
    .at(-1)
  return named?.rule === "size.tailsAlone"
}

/** Exact millimetres or metres in one of each imperial unit (international yard and pound agreement, 1959). */
const imperialMm: Readonly<Record<string, number>> = { foot: 304.8, inch: 25.4, yard: 914.4 }

function claimImperial(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit") ?? ""
  const number = numberOf(site) ?? reading(0, 0, "1", {})
  if (unit === "gauge") return doubted(site, "conductor_csa", [], "a wire gauge is not square millimetres")
  if (unit === "km")
    return site.asked ? doubted(site, askedKind(site), [shifted(number.text, 3)], "kilometres cannot be meant") : null
  if (unit === "mile")
    return site.asked ? doubted(site, askedKind(site), [number.value].filter(isSold), "miles cannot be meant") : null
  const mm = imperialMm[unit]
  if (mm === undefined) return null
  const kind = site.asked === "distance" ? "distance" : "length"
  const exact = Math.round(number.value * mm * 10) / 10
  const isSimple = taggedNumbers(site.utterance, site.island, "n").length === 1 || hasTag(site.island, "one")
  return doubted(
    site,
    kind,
    isSimple ? [kind === "distance" ? exact : shifted(String(exact), -3)] : [],
    "feet and inches are not what is recorded",
  )
}

const askedKind = (site: Site): Claim["kind"] => (isMeasured(site.asked) ? site.asked : "length")

function claimLength(site: Site): Claim | null {
  const whole = hasTag(site.island, "one") ? reading(site.island.from, site.island.to, "1", {}) : numberOf(site)
  if (!whole) return null
  if (site.asked === "distance") return doubted(site, "distance", [whole.value], "a distance is wanted in millimetres")
  const plus = tagValue(site.island, "plus")
  if (hasTag(site.island, "one") && !plus && isPrice(site)) return null
  const centimetres = numberOf(site, "cm")
  if (centimetres && centimetres.value < 10)
    return doubted(site, "length", [whole.value + centimetres.value / 10], "the last figure may be tens or ones")
  const text = plus ? `${whole.text}${plus.slice(1)}` : centimetres ? `${whole.text}.${centimetres.text}` : whole.text
  if (isTornSquare(site, whole))
    return doubted(site, "length", [whole.value], "the two may belong to square millimetres")
  const hasUnit = tagValue(site.island, "unit") === "m"
  return measure(site, "length", { hasUnit, number: { ...whole, text, value: Number(text) } })
}

/** "16 mm 2 m": the 2 may be a length, or the end of mm². */
function isTornSquare({ utterance, island }: Site, number: NumberReading): boolean {
  const before = utterance.words[number.from - 1] ?? ""
  return (
    number.text === "2" &&
    number.from === island.from &&
    /^(mm|mil|millimetres?)$/.test(before) &&
    !isEdgeGap(utterance.tokens[number.from - 1]!.after)
  )
}

/** "twelve quid a metre": one metre is only said when it stands by itself. */
function isPrice({ utterance, island }: Site): boolean {
  return utterance.islands.some((one) => one.to === island.from && /^quantity/.test(one.rule))
}

function claimCentimetres(site: Site): Claim | null {
  if (site.asked === "length") return measure(site, "length", { hasUnit: true, shift: -2 })
  if (site.asked === "distance") return measure(site, "distance", { hasUnit: true, shift: 1 })
  const value = numberOf(site)?.value
  return value === undefined ? null : doubted(site, "distance", [value * 10], "a distance or a length")
}

function claimDistance(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit")
  if (unit === "foot" || unit === "inch") return imperialDistance(site, unit)
  const one = reading(site.island.from, site.island.to, hasTag(site.island, "half") ? "0.5" : "1", {})
  const number = numberOf(site) ?? (hasTag(site.island, "one") || hasTag(site.island, "half") ? one : undefined)
  if (!number) return null
  const shift = unit === "m" ? 3 : unit === "cm" ? 1 : 0
  const goesOn = site.utterance.words[site.island.to] === "to"
  if (unit === "m" && goesOn) return measure(site, "length", { hasUnit: true, number })
  const centimetres = numberOf(site, "cm")
  const joined = centimetres ? { ...number, text: `${number.text}.${centimetres.text}` } : number
  const claim = measure(site, "distance", { hasUnit: unit !== undefined, shift, number: joined })
  if (!claim) return null
  const qualifier = tagValue(site.island, "qualifier")
  if (hasTag(site.island, "hedge"))
    return { ...claim, doubt: { candidates: [claim.value ?? 0], because: "that was not sure" } }
  return qualifier ? { ...claim, qualifier: qualifier as Qualifier } : claim
}

function imperialDistance(site: Site, unit: string): Claim {
  const number = numberOf(site)
  const mm = Math.round((number?.value ?? 1) * imperialMm[unit]! * 10) / 10
  return doubted(site, "distance", [mm], "feet and inches are not what is recorded")
}

const ohmShifts: Readonly<Record<string, number>> = { ohm: 0, milliohm: -3, kilohm: 3, megohm: 6, "megohm?": 6 }

function claimReading(site: Site): Claim | null {
  const { island } = site
  const number = hasTag(island, "one") ? reading(island.from, island.to, "1", {}) : numberOf(site)
  if (!number) return null
  const plus = tagValue(island, "plus")
  if (plus)
    return measure(site, "resistance", { hasUnit: true, number: { ...number, text: `${number.text}${plus.slice(1)}` } })
  const unit = tagValue(island, "unit")
  const qualifier = tagValue(island, "qualifier") as Qualifier | undefined
  if (unit === undefined && qualifier === undefined && number.lead === null) return claimBare(site)
  if (hasTag(island, "broken")) return doubted(site, "resistance", [], "the letter may stand for the point")
  if (unit === "microhm?") return doubted(site, "resistance", [], "microhms cannot be meant")
  if (unit === "megohm?" && qualifier !== ">")
    return doubted(site, "resistance", [shifted(number.text, -3), shifted(number.text, 6)], "milliohms or megohms")
  if (site.asked === "conductor_csa" && unit === "ohm" && isSold(number.value))
    return doubted(site, "conductor_csa", [number.value], "a size was asked and ohms came")
  const claim = measure(site, "resistance", { hasUnit: unit !== undefined, number, shift: unit ? ohmShifts[unit]! : 0 })
  if (!claim) return null
  if (qualifier && unit === undefined && number.lead !== "nought")
    return doubted(site, "resistance", [number.value, shifted(number.text, 3)], "the unit was not heard")
  return qualifier ? { ...claim, qualifier } : claim
}

/** Over range is no number; the limit is asked for, unless a later part of the sentence gives it. */
function overRange(site: Site): Claim {
  const { from, to } = site.island
  return { kind: "resistance", value: null, unit: "ohm", qualifier: ">", from, to, isBare: false }
}

/** "two hundred, off the meter": the place makes it a distance. */
function isBeforePlace({ utterance, island }: Site): boolean {
  const next = utterance.islands.find((one) => one.rule === "distance.place" && one.from === island.to)
  return next !== undefined && /^(off|from|past|above|below|beyond|after)$/.test(utterance.words[next.from]!)
}

/** "ten mil on gas and sixteen on water": the second size leaves its unit out. */
function isSharedSize({ utterance, island }: Site): boolean {
  const hasSize = utterance.islands.some(
    (one) => one.to <= island.from && /^(quantity\.mil|size\.size)$/.test(one.rule),
  )
  const isOn = /^(on|for|to)$/.test(utterance.words[island.to] ?? "")
  return (
    hasSize &&
    isOn &&
    utterance.islands.some((one) => one.rule === "parts.part" && one.from > island.to && one.from <= island.to + 2)
  )
}

/** "on this one", "the other one": no number. */
function isPronoun({ utterance }: Site, number: NumberReading): boolean {
  const isOne = number.to - number.from === 1 && utterance.words[number.from] === "one"
  return (
    isOne &&
    /^(this|that|the|which|other|last|first|next|each|every|another|big|small|left|right|hand|had|good|only)$/.test(
      utterance.words[number.from - 1] ?? "",
    )
  )
}

/** A number without a unit: a reading by its spoken nought, else the answer to the question, else nothing certain. */
function claimBare(site: Site): Claim | null {
  const number = numberOf(site)
  if (!number) return null
  if (isPronoun(site, number)) return null
  const isReading = number.lead === "nought" || (number.lead === "nothing" && number.places > 1)
  if (isReading && site.asked !== "length" && site.asked !== "distance")
    return measure(site, "resistance", { hasUnit: false })
  if (isReading && number.spoken && number.places > 1 && number.lead === "nought")
    return measure(site, "resistance", { hasUnit: false })
  if (isBeforePlace(site)) return measure(site, "distance", { hasUnit: false })
  if (!site.asked && isSharedSize(site) && isSold(number.value))
    return measure(site, "conductor_csa", { hasUnit: false })
  if (isOfLength(site) && isSold(number.value)) return measure(site, "conductor_csa", { hasUnit: false })
  if (isMeasured(site.asked)) return measure(site, site.asked, { hasUnit: false })
  const isClock = /^(half|quarter)$/.test(site.utterance.words[number.from] ?? "") && number.doubt !== null
  if ((number.shape === "digits" || isClock) && !site.asked) return null
  const { from, to } = site.island
  const candidates = number.doubt?.candidates ?? [number.value]
  return {
    kind: "field",
    value: number.value,
    from,
    to,
    isBare: true,
    doubt: { candidates, because: "it was not said what that number is" },
  }
}
