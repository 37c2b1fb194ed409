/** What is said without a number: how the supply is earthed, its polarity, and what a survey of a part showed. */
import type { Context } from "../facts/Interpretation"
import type { Claim } from "./Claim"
import { bitsOf } from "./GrammarBits"
import { hasTag, type Island, tagValue, type Utterance } from "./Utterance"

const unnumbered = bitsOf("arrangement", "supply", "survey")

/** Claims of the earthing arrangement, of polarity and of surveys. */
export function claimSupply(utterance: Utterance, context: Context): Claim[] {
  const claims: Claim[] = []
  if ((utterance.grammars & unnumbered) === 0) return claims
  for (const island of utterance.islands) {
    if (island.rule === "arrangement.arrangement") claims.push(...claimArrangement(island, context))
    if (island.rule === "arrangement.doubtful") claims.push(...doubtArrangement(utterance, island, context))
    if (island.rule === "supply.polarity") claims.push(claimPolarity(island))
    if (island.rule === "survey.survey")
      claims.push({ kind: "survey", value: tagValue(island, "survey")!, ...base(island) })
  }
  return claims
}

const base = (island: Island) => ({ from: island.from, to: island.to, isBare: false })

function claimArrangement(island: Island, context: Context): Claim[] {
  const isAsked = context.asked === "earthing_arrangement"
  if ((hasTag(island, "asked") || island.doubt > 0) && !isAsked) return []
  return [{ kind: "earthing_arrangement", value: tagValue(island, "value")!, ...base(island) }]
}

function doubtArrangement(utterance: Utterance, island: Island, context: Context): Claim[] {
  const isWhole = island.to - island.from === utterance.tokens.length
  if (context.asked !== "earthing_arrangement" && !isWhole) return []
  const doubt = { candidates: ["TN-S", "TN-C-S"], because: "a letter may be missing" }
  return [{ kind: "earthing_arrangement", value: null, ...base(island), doubt }]
}

const claimPolarity = (island: Island): Claim => ({
  kind: "polarity",
  value: tagValue(island, "value")!,
  ...base(island),
})
