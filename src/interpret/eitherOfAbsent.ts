/** A part behind a "no" that may deny it or put the part before it right: which of them is meant has to be asked. */
import type { Item } from "../facts/Item"
import type { Claim } from "./Claim"
import { isEdgeGap } from "./Token"
import { tagValue, type Utterance } from "./Utterance"

/** A part that was named, and where its name ends. */
interface Named {
  item: Item
  to: number
}

/**
 * "gas no water ten mil", "on the gas, no the oil": whether a part is not there or not meant, or whether the one before it
 * was put right, cannot be told.
 */
export function eitherOfAbsent(
  claim: Claim,
  mentions: readonly Named[],
  { islands, tokens, words }: Utterance,
): Item[] | null {
  const absent = islands.find((one) => one.rule === "guards.absent" && one.said.has("item"))
  if (!absent) return null
  const opens = absent.to === claim.from && !isEdgeGap(tokens[claim.from - 1]!.after)
  const isArticled = absent.from >= claim.to && words[absent.from + 1] === "the"
  const named = opens || isArticled ? mentions.findLast((one) => one.to === absent.from) : undefined
  return named ? [named.item, tagValue(absent, "item")!] : null
}
