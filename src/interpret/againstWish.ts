/** "was six, needs to be ten": beside a value that only ought to be, which of the two is there was not said. */
import { type Claim, isMeasured } from "./Claim"
import { hasTag, type Utterance } from "./Utterance"

const oughtTo = /(to|should|must|ought)$/

/** Whether the value is only one that ought to be. */
const isWished = ({ kind, from }: Claim, { islands, words }: Utterance): boolean =>
  isMeasured(kind) &&
  islands.some(
    (one) =>
      one.rule === "guards.plan" &&
      one.to <= from &&
      oughtTo.test(words.slice(one.from, one.to).join(" ")) &&
      words.slice(one.to, from).every((word) => word === "be"),
  )

/** The claims that were kept, those in doubt that a dropped wish for the same field and part stands behind. */
export function againstWish(kept: readonly Claim[], claims: readonly Claim[], utterance: Utterance): Claim[] {
  const wished = claims.find((claim) => isWished(claim, utterance) && kept.every((one) => one.from !== claim.from))
  if (!wished) return [...kept]
  const isOfOther = (claim: Claim) =>
    utterance.islands.some((one) => hasTag(one, "item") && one.from >= claim.to && one.to <= wished.from)
  return kept.map((claim) => {
    if (claim.kind !== wished.kind || claim.doubt || claim.to > wished.from || isOfOther(claim)) return claim
    const candidates = [claim.value, wished.value].filter((one) => one !== null)
    return { ...claim, doubt: { candidates, because: "what ought to be may not be what is" } }
  })
}
