/** Readings in ohms with their limits. Over range is a state and never a number. */
import type { Qualifier } from "../facts/Quantity"
import { reading } from "./AtomRow"
import type { Claim } from "./Claim"
import { claimBare, isPronoun } from "./claimBare"
import { isSold, shifted } from "./decideQuantity"
import type { NumberReading } from "./NumberReading"
import { doubted, measure, numberOf, type Site } from "./Site"
import { hasTag, tagValue } from "./Utterance"

const ohmShifts: Readonly<Record<string, number>> = { ohm: 0, milliohm: -3, kilohm: 3, megohm: 6, "megohm?": 6 }

/** A phrase that names a reading. */
export function claimReading(site: Site): Claim | null {
  const { island } = site
  const part = tagValue(island, "part")
  if (part) return measure(site, "resistance", { hasUnit: true, number: reading(island.from, island.to, part, {}) })
  if (isOnlyBound(site)) return null
  const number = hasTag(island, "one") ? reading(island.from, island.to, "1", {}) : numberOf(site)
  if (!number || isPronoun(site, number)) return null
  const plus = tagValue(island, "plus")
  if (plus)
    return measure(site, "resistance", { hasUnit: true, number: { ...number, text: `${number.text}${plus.slice(1)}` } })
  return claimOhms(site, number, tagValue(island, "unit"))
}

/** A reading of a plain number, with the unit that was said. */
function claimOhms(site: Site, number: NumberReading, unit: string | undefined): Claim | null {
  const { island } = site
  const isLimit = unit !== undefined && isLimitOfMeter(site)
  const bound = hasRisen(site) ? undefined : (tagValue(island, "qualifier") as Qualifier | undefined)
  const qualifier = isLimit ? ">" : bound
  if (unit === undefined && number.lead === null && (qualifier === undefined || site.asked === "distance"))
    return withQualifier(claimBare(site), qualifier)
  if (hasTag(island, "broken")) return doubted(site, "resistance", [], "the letter may stand for the point")
  if (unit === "microhm?") return doubted(site, "resistance", [], "microhms cannot be meant")
  if (unit === "megohm?" && qualifier !== ">")
    return doubted(site, "resistance", [shifted(number.text, -3), shifted(number.text, 6)], "milliohms or megohms")
  if (site.asked === "conductor_csa" && unit === "ohm" && isSold(number.value))
    return doubted(site, "conductor_csa", [number.value], "a size was asked and ohms came")
  const said =
    unit === "megohm" && qualifier === ">" && isFullScale(number) ? { ...number, shape: "whole" as const } : number
  const claim = measure(site, "resistance", {
    hasUnit: unit !== undefined,
    number: said,
    shift: unit ? ohmShifts[unit]! : 0,
  })
  if (!claim) return null
  return (qualifier && unit === undefined ? doubtBound(site, number) : null) ?? withQualifier(claim, qualifier)
}

/** A bound without a unit: of the size that was asked for, or of ohms or thousands of them. */
function doubtBound(site: Site, number: NumberReading): Claim | null {
  if (site.asked === "conductor_csa" || site.asked === "neutral_csa")
    return doubted(site, site.asked, [number.value].filter(isSold), "that is only a bound")
  // "under point oh two": with two figures behind the point there is no other unit to think of.
  const isFine = number.lead === "nothing" && number.places > 1 && site.asked === "resistance"
  if (number.lead === "nought" || isFine) return null
  return doubted(site, "resistance", [number.value, shifted(number.text, 3)], "the unit was not heard")
}

/** "more than nine ninety-nine meg": the most that testers of insulation commonly show. Common practice, no source. */
const isFullScale = ({ shape, value }: NumberReading): boolean => shape === "implied" && value === 999

/** "it's gone up to nought point one two": how it changed, and no bound. */
const hasRisen = ({ utterance, island }: Site): boolean =>
  /^(up|over|under|above|below)$/.test(utterance.words[island.from]!) &&
  /^(gone|went|goes|going|come|came|coming|risen|rose|crept|jumped|shot|back|climbed|down|dropped|dipped)$/.test(
    utterance.words[island.from - 1] ?? "",
  )

const withQualifier = (claim: Claim | null, qualifier: Qualifier | undefined): Claim | null =>
  claim && qualifier ? { ...claim, qualifier } : claim

/** "all sizes up to two forty": a bound that no unit and no question ties to ohms. */
const isOnlyBound = (site: Site): boolean =>
  !site.asked &&
  tagValue(site.island, "unit") === undefined &&
  numberOf(site)?.lead === null &&
  /^(up|under|over|above|below|at)$/.test(site.utterance.words[site.island.from]!)

/** "over range, and the limit's two hundred ohms": how much the meter can show. */
export const isLimitOfMeter = ({ utterance, island }: Pick<Site, "utterance" | "island">): boolean =>
  /\b((limit|limit's|max|maximum|most|top|tops out|maxes out|runs out|goes up|only goes|stops)( (is|it|shows|show|can|it'll|goes|to|at|up))*|(over range|overrange|off the scale|infinity|open|open circuit|open line|ol|o l) (on|at)( (the|my|a))?)$/.test(
    utterance.words.slice(0, island.from).join(" "),
  ) && utterance.islands.some((one) => one.rule === "resistance.overRange" && one.to <= island.from)

/** The loop impedance of the supply, and an electrode's resistance: ohms, whether or not the word was said. */
export const claimSupplyReading = (site: Site): Claim | null => measure(site, "resistance", { hasUnit: true })

/** Over range is no number; the limit is asked for, unless a later part of the sentence gives it. */
export function overRange(site: Site): Claim {
  const { from, to } = site.island
  return { kind: "resistance", value: null, unit: "ohm", qualifier: ">", from, to, isBare: false }
}
