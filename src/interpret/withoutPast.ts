/**
 * "was four, is now ten": what was, set against what is now. Only where both are marked does the first fall; without the
 * "now" the two are asked about like any two values.
 */
import { type Claim, isMeasured } from "./Claim"
import type { Utterance } from "./Utterance"

const was = /\b(was|were|used to be|had been)( (a|an|at|in|only|just|reading|showing))*$/
const wasInside = /\b(was|were|used to be|had been)\b/
const now =
  /\b(now|currently)( (it's|it|is|that's|we're|i'm|at|in|on|a|an|reads|reading|shows|getting|down to|up to))*$/

/** The claims without those that are told as past beside one of the same field that is told as of now. */
export function withoutPast(claims: readonly Claim[], { words, islands, tokens }: Utterance): readonly Claim[] {
  if (claims.length < 2) return claims
  const before = ({ from }: Claim) => words.slice(Math.max(0, from - 5), from).join(" ")
  if (!words.some((word) => word === "now" || word === "currently")) return doubtPast(claims, words)
  const isNow = (claim: Claim) =>
    now.test(before(claim)) || (words[claim.to] === "now" && tokens[claim.to - 1]!.after === "space")
  return claims.filter((claim, at) => {
    const next = claims[at + 1]
    if (!next || next.kind !== claim.kind || !(isMeasured(claim.kind) || claim.kind === "field")) return true
    const isOfOther = islands.some((one) => one.said.has("item") && one.from >= claim.to && one.to <= next.from)
    return isOfOther || !was.test(before(claim)) || !isNow(next)
  })
}

/** "the fuse was sixty, they've put an eighty in": a number that nothing claims may be what there is now. */
function doubtPast(claims: readonly Claim[], words: readonly string[]): readonly Claim[] {
  return claims.map((claim, at) => {
    const next = claims[at + 1]
    if (next?.kind !== "field" || claim.doubt || !isMeasured(claim.kind)) return claim
    if (!wasInside.test(words.slice(Math.max(0, claim.from - 2), claim.to).join(" "))) return claim
    const candidates = claim.value === null ? [] : [claim.value]
    return { ...claim, doubt: { candidates, because: "what was may not be what is" } }
  })
}
