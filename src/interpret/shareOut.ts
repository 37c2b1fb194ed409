/**
 * One sentence that says its values of several parts: "gas and water, eight and twelve metres respectively" gives each
 * its own, "gas is ten mil and so's the water" gives both the same. What does not come out even is left as it was.
 */
import { isBond } from "../facts/Item"
import type { Mention } from "./assignSubjects"
import { type Claim, isMeasured } from "./Claim"
import { decideQuantity } from "./decideQuantity"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"

/** Claims with their parts, where as many values as parts are said "respectively"; else null. */
export function shareRespectively(
  claims: readonly Claim[],
  mentions: readonly Mention[],
  utterance: Utterance,
): Claim[] | null {
  const { words, numbers } = utterance
  if (words.at(-1) !== "respectively" || mentions.length < 2 || mentions.length !== claims.length) return null
  const parts = [...new Set(mentions.map((one) => one.item))].filter(isBond)
  const last = claims.at(-1)!
  const isWhole = (claim: Claim) => isMeasured(claim.kind) && !claim.doubt && typeof claim.value === "number"
  if (parts.length !== claims.length || !isWhole(last) || !mayShare.has(last.kind)) return null
  const shared = claims.map((claim, at) => {
    const number = numbers.find((one) => one.from >= claim.from && one.to <= claim.to)
    // A unit that is ours can be lent to the numbers before it; "eight and twelve centimetres" is asked about.
    const isLent = claim.isBare && number && !number.doubt && isMeasured(last.kind)
    const kind = isMeasured(last.kind) ? last.kind : null
    const own =
      isLent && kind ? decideQuantity({ kind, number, hasUnit: true, isAsked: false }, claim.from, claim.to) : claim
    return { ...own, subject: parts[at]! }
  })
  const isEven = shared.every((one) => isWhole(one) && one.kind === last.kind)
  return isEven && hasOwnUnit(last, utterance) ? shared : null
}

const mayShare: ReadonlySet<Claim["kind"]> = new Set(["conductor_csa", "length", "distance"])

const hasOwnUnit = (claim: Claim, { numbers }: Utterance): boolean =>
  numbers.some((one) => one.from >= claim.from && one.to <= claim.to && one.value === claim.value)

const also = /^((already|now|too|there) )*(and |but )?(so's|so is)( the)?$/

/** The claims, and those that "so's the water" says again of another part. */
export function shareAlso(claims: readonly Claim[], mentions: readonly Mention[], utterance: Utterance): Claim[] {
  const { words, tokens } = utterance
  if (mentions.length < 2 || !words.some((word) => word === "so" || word === "so's")) return [...claims]
  return claims.flatMap((claim) => {
    const mayCopy = claim.kind === "conductor_csa" || claim.kind === "step_done"
    const other = mentions.find(
      (one) => one.from >= claim.to && also.test(words.slice(claim.to, one.from).join(" ")) && isBond(one.item),
    )
    const isEnd = other && (other.to === words.length || isEdgeGap(tokens[other.to - 1]!.after))
    if (!mayCopy || !isEnd || claim.doubt || claim.subject === undefined || claim.subject === other.item) return [claim]
    return [claim, { ...claim, subject: other.item }]
  })
}
