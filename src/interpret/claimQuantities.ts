/** What the measure-like phrases of an utterance claim, one phrase at a time, with the open question as their context. */
import type { Context } from "../facts/Interpretation"
import type { Claim } from "./Claim"
import { claimBare, claimLost, claimVague } from "./claimBare"
import { claimCentimetres, claimDistance, claimImperial, claimLength } from "./claimLengths"
import { claimReading, claimSupplyReading, overRange } from "./claimReadings"
import { claimMil, claimSize } from "./claimSizes"
import { doubted, follows, measure, numberOf, type Site } from "./Site"
import type { Utterance } from "./Utterance"

/** Claims of every phrase that holds a measure. */
export function claimQuantities(utterance: Utterance, context: Context): Claim[] {
  const claims: Claim[] = []
  for (const island of utterance.islands) {
    const claim = claimOf({ utterance, island, asked: context.asked, readback: context.readback?.kind })
    if (claim) claims.push(claim)
  }
  return claims
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
    case "supply.loop":
    case "supply.electrode":
      return claimSupplyReading(site)
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
