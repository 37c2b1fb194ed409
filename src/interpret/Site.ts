/** One phrase of an utterance under one question, and what every reader of measures needs to make a claim of it. */
import type { Claim, ClaimDoubt, MeasuredKind } from "./Claim"
import { decideQuantity } from "./decideQuantity"
import type { NumberReading } from "./NumberReading"
import { hasTag, type Island, taggedNumbers, tagValue, type Utterance } from "./Utterance"

/** A phrase with what bears on its meaning. */
export interface Site {
  utterance: Utterance
  island: Island
  asked: string | undefined
  /** The field of what was just read back. */
  readback: string | undefined
}

/** How a number was said: with a unit, and how far that unit is from ours in powers of ten. */
export interface Measure {
  hasUnit: boolean
  shift?: number
  number?: NumberReading
}

/** The number under a tag of the phrase. */
export const numberOf = (site: Site, name = "n"): NumberReading | undefined =>
  taggedNumbers(site.utterance, site.island, name)[0]

/** Whether a phrase of that rule stands earlier in the utterance. */
export const follows = ({ utterance, island }: Site, rule: string): boolean =>
  utterance.islands.some((one) => one.rule === rule && one.to <= island.from)

/** A claim that only asks. */
export function doubted(site: Site, kind: Claim["kind"], candidates: ClaimDoubt["candidates"], because: string): Claim {
  return {
    kind,
    value: null,
    from: site.island.from,
    to: site.island.to,
    isBare: false,
    doubt: { candidates, because },
  }
}

/** A claim of a field from the number of the phrase; null when it holds none. */
export function measure(site: Site, kind: MeasuredKind, how: Measure): Claim | null {
  const number = how.number ?? numberOf(site)
  if (!number) return null
  const { from, to } = site.island
  // Digits one by one are how a refused number is said again.
  const plain =
    number.shape === "digits" && kind !== "resistance" && (site.readback === kind || isSaidBefore(site, number))
      ? { ...number, shape: "whole" as const }
      : number
  const { hasUnit, shift = 0 } = how
  const claim = decideQuantity({ kind, isAsked: site.asked === kind, hasUnit, shift, number: plain }, from, to)
  doubtSoundAlike(site, claim)
  claim.isBare = isBare(site, number, how)
  if (plain !== number) claim.isSpelled = true
  return claim
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
function doubtSoundAlike({ island, asked }: Site, claim: Claim): void {
  const isAllowed = island.doubt === 0 || (island.doubt === 1 && asked === claim.kind)
  if (isAllowed || claim.doubt) return
  claim.doubt = { candidates: claim.value === null ? [] : [claim.value], because: "a word may have been misheard" }
}
