/** What is said about the supply without a number: how it is earthed, and its polarity. */
import type { Context } from "../facts/Interpretation"
import type { Claim } from "./Claim"
import { hasTag, type Island, tagValue, type Utterance } from "./Utterance"

/** Claims of the earthing arrangement and of polarity. */
export function claimSupply(utterance: Utterance, context: Context): Claim[] {
  return utterance.islands.flatMap((island) => {
    if (island.rule === "arrangement.arrangement") return claimArrangement(island, context)
    if (island.rule === "arrangement.doubtful") return doubtArrangement(utterance, island, context)
    if (island.rule === "supply.polarity") return [claimPolarity(island)]
    return []
  })
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
