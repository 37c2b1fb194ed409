/** Lengths and distances in metres, centimetres and millimetres; feet and inches only lead to a question. */
import type { Qualifier } from "../facts/Quantity"
import { reading } from "./AtomRow"
import { type Claim, isMeasured } from "./Claim"
import { isSold, shifted } from "./decideQuantity"
import type { NumberReading } from "./NumberReading"
import { doubted, measure, numberOf, type Site } from "./Site"
import { isEdgeGap } from "./Token"
import { hasTag, taggedNumbers, tagValue } from "./Utterance"

/** Exact millimetres or metres in one of each imperial unit (international yard and pound agreement, 1959). */
const imperialMm: Readonly<Record<string, number>> = { foot: 304.8, inch: 25.4, yard: 914.4 }

/** Feet, inches, yards, miles and gauges: asked about, with the exact conversion where there is one. */
export function claimImperial(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit") ?? ""
  const number = numberOf(site) ?? reading(0, 0, "1", {})
  if (unit === "gauge") return doubted(site, "conductor_csa", [], "a wire gauge is not square millimetres")
  if (unit === "km")
    return site.asked ? doubted(site, askedKind(site), [shifted(number.text, 3)], "kilometres cannot be meant") : null
  if (unit === "mile")
    return site.asked ? doubted(site, askedKind(site), [number.value].filter(isSold), "miles cannot be meant") : null
  const mm = imperialMm[unit]
  if (mm === undefined || isHeight(site)) return null
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

/** "he's six foot two": how tall somebody is. */
const isHeight = ({ utterance, island }: Site): boolean =>
  /^(he's|she's|i'm|you're|they're|lad's|he|she)$/.test(utterance.words[island.from - 1] ?? "")

const askedKind = (site: Site): Claim["kind"] => (isMeasured(site.asked) ? site.asked : "length")

/** A phrase in metres. */
export function claimLength(site: Site): Claim | null {
  const whole = hasTag(site.island, "one") ? reading(site.island.from, site.island.to, "1", {}) : numberOf(site)
  if (!whole) return null
  if (site.asked === "distance" && whole.shape === "fraction" && whole.value < 1 && !whole.doubt)
    return measure(site, "distance", { hasUnit: true, shift: 3, number: whole })
  if (hasTag(site.island, "mil")) return doubted(site, "length", [], "a length is wanted in metres")
  const plus = tagValue(site.island, "plus")
  if (site.asked === "distance")
    return doubted(site, "distance", inMillimetres(withPart(whole, plus)), "a distance is wanted in millimetres")
  if (hasTag(site.island, "bound"))
    return site.asked === "length" ? doubted(site, "length", [whole.value], "that is only a bound") : null
  if (site.asked === "resistance" && whole.lead === "nought" && whole.value < 1)
    return doubted(site, "resistance", [whole.value], "a reading was asked and metres came")
  if (hasTag(site.island, "one") && !plus && isPrice(site)) return null
  const centimetres = numberOf(site, "cm")
  const isExact = hasTag(site.island, "exact")
  if (centimetres && centimetres.value < 10 && !isExact)
    return doubted(site, "length", [whole.value + centimetres.value / 10], "the last figure may be tens or ones")
  const text = centimetres ? `${whole.text}.${centimetres.text.padStart(2, "0")}` : withPart(whole, plus).text
  if (!centimetres && isTornSquare(site, whole))
    return doubted(site, "length", [whole.value], "the two may belong to square millimetres")
  const hasUnit = tagValue(site.island, "unit") === "m"
  return measure(site, "length", { hasUnit, number: { ...whole, text, value: Number(text) } })
}

/** "a metre and a quarter": the number with the part that was said behind its unit. */
function withPart(whole: NumberReading, plus: string | undefined): NumberReading {
  const text = `${whole.text}${plus?.slice(1) ?? ""}`
  return plus ? { ...whole, text, value: Number(text) } : whole
}

/** Metres that a clamp may be away, in millimetres; more than three are likelier the length of the run. */
const inMillimetres = ({ text, value, doubt }: NumberReading): number[] =>
  doubt || value > 3 ? [] : [shifted(text, 3)]

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

/** Centimetres belong to the field that was asked. */
export function claimCentimetres(site: Site): Claim | null {
  if (site.asked === "length") return measure(site, "length", { hasUnit: true, shift: -2 })
  if (site.asked === "distance") return measure(site, "distance", { hasUnit: true, shift: 1 })
  const value = numberOf(site)?.value
  return value === undefined ? null : doubted(site, "distance", [value * 10], "a distance or a length")
}

/** How far the clamp is from what it is measured from. */
export function claimDistance(site: Site): Claim | null {
  const unit = tagValue(site.island, "unit")
  if (unit === "foot" || unit === "inch") return imperialDistance(site, unit)
  const one = reading(site.island.from, site.island.to, hasTag(site.island, "half") ? "0.5" : "1", {})
  const number = numberOf(site) ?? (hasTag(site.island, "one") || hasTag(site.island, "half") ? one : undefined)
  if (!number) return null
  const shift = unit === "m" ? 3 : unit === "cm" ? 1 : 0
  const goesOn = site.utterance.words[site.island.to] === "to"
  if (unit === "m" && goesOn) return measure(site, "length", { hasUnit: true, number })
  const centimetres = numberOf(site, "cm")
  const plus = tagValue(site.island, "plus")?.slice(1)
  const rest = centimetres ? `.${centimetres.text}` : plus
  const joined = rest ? { ...number, text: `${number.text}${rest}` } : number
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
