/** What the measure-like phrases of an utterance claim, one phrase at a time, with the open question as their context. */
import type { Context } from "../facts/Interpretation"
import type { Claim } from "./Claim"
import { claimBare, claimLost, claimVague } from "./claimBare"
import { claimCentimetres, claimDistance, claimImperial, claimLength } from "./claimLengths"
import { claimReading, claimSupplyReading, overRange } from "./claimReadings"
import { claimMil, claimSize } from "./claimSizes"
import { doubted, follows, measure, numberOf, type Site } from "./Site"
import { isEdgeGap } from "./Token"
import type { Island, Utterance } from "./Utterance"

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
    case "quantity.foreign":
      return claimCounted(site)
    case "resistance.overRange":
      return overRange(site)
    case "resistance.nothingShown":
      return site.asked === "resistance" || follows(site, "resistance.shownAlone")
        ? doubted(site, "resistance", [], "nothing may be nought or over range")
        : null
    case "supply.fuse":
      return measureFuse(site)
    case "supply.current":
      return claimCurrent(site)
    case "quantity.vague":
      return claimVague(site)
    case "quantity.lost":
      return claimLost(site)
    case "quantity.bare":
      return site.asked === "fuse_rating" ? measureFuse(site) : claimBare(site)
    default:
      return null
  }
}

/**
 * Amps that nobody called a fuse: the fuse when it was asked, when they stand by themselves in a row of what the supply
 * has, and when nothing else was said at all. Beside other words of the supply they are asked about.
 */
function claimCurrent(site: Site): Claim | null {
  const { utterance, island } = site
  const number = numberOf(site)
  if (site.asked === "resistance" && number?.lead === "nought")
    return doubted(site, "resistance", [number.value], "a reading was asked and amps came")
  if (site.asked === "fuse_rating" || follows(site, "supply.fuseAlone")) return measureFuse(site)
  const value = numberOf(site)?.value
  if (value === undefined) return null
  const isSupply = utterance.islands.some((one) => /^(arrangement\.arr|size\.neutral|supply\.polarity$)/.test(one.rule))
  const isUsual = usualAmps.has(value) && numberOf(site)?.doubt === null
  const isAlone = utterance.islands.every((one) => mayStandBeside.test(one.rule)) && saysNoMore(utterance)
  if (isUsual && (isAlone || (isSupply && (isOwnClause(utterance, island) || isOfArrangement(utterance, island)))))
    return measureFuse(site)
  return isSupply ? doubted(site, "fuse_rating", [value], "it was not said what the amps are of") : null
}

/** "nought point nought four three times": the last figure may be the reading's, or count how often it came. */
function claimCounted(site: Site): Claim | null {
  const number = numberOf(site)
  if (number?.lead !== "nought" || number.places < 3 || site.utterance.words[site.island.to - 1] !== "times")
    return null
  return doubted(
    site,
    "resistance",
    [Number(number.text.slice(0, -1)), number.value],
    "the last figure may count the times",
  )
}

/** Ratings that the fuse of a house's supply usually has, and that little else in it has. Common practice, no source. */
const usualAmps: ReadonlySet<number> = new Set([60, 80, 100])
const mayStandBeside = /^(supply\.current|quantity\.bare|repairs\.\w+|answers\.(deny|confirm))$/

const saysNoMore = ({ leftovers, words }: Utterance): boolean =>
  leftovers.every((one, at) => one === null || one === "skippable" || /^(it|it's|that's|and)$/.test(words[at]!))

/** Whether nothing but small words stands beside the phrase between two pauses. */
function isOwnClause({ tokens, leftovers }: Utterance, { from, to }: Island): boolean {
  const isEnd = to === tokens.length || isEdgeGap(tokens[to - 1]!.after)
  let first = from
  while (first > 0 && !isEdgeGap(tokens[first - 1]!.after) && leftovers[first - 1] === "skippable") first -= 1
  return isEnd && (first === 0 || isEdgeGap(tokens[first - 1]!.after))
}

/** "TN-S on an eighty amp with sixteen tails" */
const isOfArrangement = ({ islands, words }: Utterance, { from }: Island): boolean =>
  islands.some(
    (one) =>
      one.rule === "arrangement.arrangement" &&
      /^(on|with|at)( (a|an|the))?$/.test(words.slice(one.to, from).join(" ")),
  )

/** Ratings of supplies with three phases. Common practice, no source. */
const largeAmps: ReadonlySet<unknown> = new Set([125, 160, 200, 250, 315, 400])

/** The fuse; a large one is usual where the supply is said to have three phases. */
function measureFuse(site: Site): Claim | null {
  const claim = measure(site, "fuse_rating", { hasUnit: true })
  const isLarge = claim?.doubt && largeAmps.has(claim.value) && numberOf(site)?.doubt === null
  if (!claim || !isLarge || !/\b(three|3) phase\b/.test(site.utterance.words.join(" "))) return claim
  const { doubt: _, ...sure } = claim
  return sure
}
