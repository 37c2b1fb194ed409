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
    if (island.rule === "arrangement.arrangement") claims.push(...claimArrangement(utterance, island, context))
    if (island.rule === "arrangement.noEarth") claims.push(...doubtNoEarth(utterance, island))
    if (island.rule === "arrangement.doubtful") claims.push(...doubtArrangement(utterance, island, context))
    if (island.rule === "supply.polarity") claims.push(claimPolarity(utterance, island))
    if (island.rule === "survey.survey")
      claims.push({ kind: "survey", value: tagValue(island, "survey")!, ...base(island) })
  }
  return claims
}

const base = (island: Island) => ({ from: island.from, to: island.to, isBare: false })

function claimArrangement(utterance: Utterance, island: Island, context: Context): Claim[] {
  // "just a rod" may be anything's rod, unless it was asked or stands beside "no earth from the street".
  const isBeside = hasTag(island, "withoutEarth") && utterance.islands.some((one) => one.rule === "arrangement.noEarth")
  if (hasTag(island, "withoutEarth") && !isBeside && context.asked !== "earthing_arrangement") return []
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

/** Without an earth from the supplier there is a rod, or there is none at all: which of them is asked. */
function doubtNoEarth(utterance: Utterance, island: Island): Claim[] {
  if (utterance.islands.some((one) => one.rule === "arrangement.arrangement")) return []
  const doubt = { candidates: ["TT"], because: "what there is in its place was not said" }
  return [{ kind: "earthing_arrangement", value: null, ...base(island), doubt }]
}

/** "I've swapped line and neutral" may be the fault or its cure; of somebody else it is the fault. */
function claimPolarity({ words }: Utterance, island: Island): Claim {
  const claim: Claim = { kind: "polarity", value: tagValue(island, "value")!, ...base(island) }
  if (claim.value === "reversed" && putRight.test(words.slice(island.to).join(" ")))
    return { ...claim, doubt: eitherWay }
  const isOwn = /^(i|i've|we|we've|just|have|now)$/.test(words[island.from - 1] ?? "")
  const mayAsk = /^(have|has|had|did|who|who's|could|would|might|was|were)$/.test(words[0]!)
  if (!hasTag(island, "byWhom") || !(isOwn || mayAsk || /^(back|again)$/.test(words[island.to] ?? ""))) return claim
  return { ...claim, doubt: eitherWay }
}

const eitherWay = { candidates: ["correct", "reversed"], because: "whether it is so now was not said" }
/** What was found and then mended. */
const putRight =
  /\b((put|set|made) (it|them|that) right|corrected|sorted|fixed|rectified|made good|(i've|i|we've|we) (swapped|reversed|changed|turned|flipped) (it|them|that)|swapped (it|them|that) (back|over|round)|now (right|correct|good|ok|okay|fine)|(right|correct|good|ok|okay|fine) now)\b/
