/** Sizes of conductors and of the supply neutral, and the "mil" that is also said for a distance. */
import { type Claim, isMeasured } from "./Claim"
import { isSold } from "./decideQuantity"
import { doubted, measure, numberOf, type Site } from "./Site"
import { isEdgeGap } from "./Token"
import { hasTag, tagValue } from "./Utterance"

/** A phrase that names a size. */
export function claimSize(site: Site, kind: "conductor_csa" | "neutral_csa"): Claim | null {
  const unit = tagValue(site.island, "unit")
  if (unit === "gauge" || unit === "number")
    return unit === "gauge" || isMeasured(site.asked)
      ? doubted(site, kind, [], "a wire gauge is not square millimetres")
      : null
  const isTails = kind === "conductor_csa" && !hasTag(site.island, "cue") && ofTails(site) && isUnparted(site)
  if (isTails) return measure(site, "neutral_csa", { hasUnit: true })
  return measure(
    site,
    kind === "conductor_csa" && site.asked === "neutral_csa" && !hasTag(site.island, "cue") ? "neutral_csa" : kind,
    { hasUnit: true },
  )
}

/** "N mil": what is asked, what stands beside it and its size decide between a size and a distance. */
export function claimMil(site: Site): Claim | null {
  const number = numberOf(site)
  if (!number) return null
  const { asked } = site
  if (asked === "conductor_csa" || asked === "neutral_csa") return measure(site, asked, { hasUnit: true })
  if (asked === "distance") return measure(site, "distance", { hasUnit: true })
  if (ofTails(site)) return measure(site, "neutral_csa", { hasUnit: true })
  if (isAfterPlace(site) && number.value >= 40) return measure(site, "distance", { hasUnit: true })
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

/** A bond named right beside the number makes it a size. */
function besideBond({ utterance, island }: Site): boolean {
  return utterance.islands.some((one) => hasTag(one, "bond") && (one.from === island.to || one.to === island.from))
}

/** "tails look fine, sixteen square": a pause behind other words begins something else. */
function isUnparted({ utterance, island }: Site): boolean {
  const tails = utterance.islands.findLast((one) => one.rule === "size.tailsAlone" && one.to <= island.from)
  const from = tails?.to ?? 0
  return !utterance.tokens.slice(from, island.from).some((token) => isEdgeGap(token.after))
}

/** "clamp to meter, two hundred and ten millimetres": the place was said first. */
const isAfterPlace = ({ utterance, island }: Site): boolean =>
  utterance.islands.some(
    (one) =>
      one.rule === "distance.place" &&
      one.to === island.from &&
      /^(to|from|off|past|above|below)$/.test(utterance.words[one.from]!) &&
      utterance.islands.some((other) => other.to === one.from && tagValue(other, "thing") === "clamp"),
  )

/** "meter tails, twenty five mil": the last thing named is what the size is of. */
function ofTails({ utterance, island }: Site): boolean {
  const named = utterance.islands
    .filter((one) => one.to <= island.from && /^(parts\.|size\.tailsAlone)/.test(one.rule))
    .at(-1)
  return named?.rule === "size.tailsAlone"
}
