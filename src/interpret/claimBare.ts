/** Numbers without a unit, units without a number, and amounts that are neither: mostly questions. */
import { type Claim, isMeasured } from "./Claim"
import { isSold } from "./decideQuantity"
import type { NumberReading } from "./NumberReading"
import { doubted, measure, numberOf, type Site } from "./Site"
import { isEdgeGap } from "./Token"
import { hasTag, type Island, taggedNumbers, tagValue } from "./Utterance"

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

/** "usually ten mil, but it's sixteen": what is, against a size said before. */
function isContrasted({ utterance, island }: Site): boolean {
  const before = utterance.words.slice(Math.max(0, island.from - 3), island.from).join(" ")
  return (
    /\bbut (it's|this is|this|that's|here)$/.test(before) &&
    utterance.islands.some((one) => one.to <= island.from && /^(quantity\.mil|size\.size)$/.test(one.rule))
  )
}

/** "ten metres of sixteen": what a length is of is a size. */
function isOfLength({ utterance, island }: Site): boolean {
  const isAfter = utterance.islands.some(
    (one) => one.rule === "length.length" && one.to >= island.from - 1 && one.to <= island.from,
  )
  return isAfter && utterance.words[island.from - 1] === "of"
}

/** "earthing conductor's sixteen, tails twenty-five": in a row of what the supply has, only its size is meant. */
const isOfEarthing = ({ utterance, island }: Site): boolean =>
  utterance.islands.some((one) => one.rule === "parts.earthing" && one.to === island.from) &&
  utterance.islands.some((one) => /^(size\.neutral|supply\.fuse|arrangement\.arrangement)$/.test(one.rule))

/** "on this one", "the other one": no number. */
export function isPronoun({ utterance }: Site, number: NumberReading): boolean {
  const isOne = number.to - number.from === 1 && utterance.words[number.from] === "one"
  return (
    isOne &&
    /^(this|that|the|which|other|last|first|next|each|every|another|big|small|left|right|hand|had|good|only)$/.test(
      utterance.words[number.from - 1] ?? "",
    )
  )
}

/** A nought said before the point makes a reading of it, whatever was asked. */
function isReading({ asked }: Site, number: NumberReading): boolean {
  const isSmall = number.lead === "nought" || (number.lead === "nothing" && number.places > 1)
  if (isSmall && asked !== "length" && asked !== "distance") return true
  return isSmall && number.spoken && number.places > 1 && number.lead === "nought"
}

/** A number without a unit: a reading by its spoken nought, else the answer to the question, else nothing certain. */
export function claimBare(site: Site): Claim | null {
  const number = numberOf(site)
  if (!number) return null
  if (isPronoun(site, number)) return null
  if (isReading(site, number)) return measure(site, "resistance", { hasUnit: false })
  if (isBeforePlace(site)) return measure(site, "distance", { hasUnit: false })
  if (!site.asked && (isSharedSize(site) || isContrasted(site)) && isSold(number.value))
    return measure(site, "conductor_csa", { hasUnit: false })
  if (isOfEarthing(site) && isSold(number.value)) return measure(site, "conductor_csa", { hasUnit: false })
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

/** "a couple of metres" is no length. */
export function claimVague(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit")
  const kind =
    unit === "m" ? (site.asked === "distance" ? "distance" : "length") : isMeasured(site.asked) ? site.asked : null
  const isCouple = site.utterance.words.slice(site.island.from, site.island.to).includes("couple")
  if (!kind || (site.asked !== kind && unit !== "m")) return null
  return doubted(site, kind, isCouple && kind === "length" ? [2] : [], "that is no exact number")
}

/** "metres, clamp on": the number before the unit is missing. */
export function claimLost(site: Site): Claim | null {
  const { utterance, island } = site
  if (isSaidInFull(site)) return null
  const gap = utterance.tokens[island.to - 1]!.after
  const opens = island.from === 0 || isEdgeGap(utterance.tokens[island.from - 1]!.after)
  const isSize = site.asked === "conductor_csa" || site.asked === "neutral_csa"
  if (isSize && island.from === 0 && (isEdgeGap(gap) || island.to === utterance.tokens.length))
    return doubted(site, site.asked as "conductor_csa" | "neutral_csa", [], "the number was not heard")
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

/** "kilohms, forget that, ohms, it's one point three ohms": the unit comes again, with its number. */
const isSaidInFull = ({ utterance, island }: Site): boolean => {
  const unit = ({ metres: "m", ohms: "ohm" } as const)[utterance.words[island.from]!]
  return (
    unit !== undefined &&
    utterance.islands.some((one) => one.from >= island.to && hasTag(one, "n") && tagValue(one, "unit") === unit)
  )
}

const numberUnder = ({ utterance }: Site, island: Island) => taggedNumbers(utterance, island, "n")[0]
