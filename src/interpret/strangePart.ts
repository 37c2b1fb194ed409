/**
 * Whether a sentence opens with a name that is no part we know: "boiler house one end off", "swimming pool ten square".
 * What is said behind it is then not said of the part that is being talked about.
 */
import type { Claim } from "./Claim"
import { isEdgeGap } from "./Token"
import type { Island, Utterance } from "./Utterance"
import { trait } from "./wordTraits"

const links = /^(is|was|the|a|that|on|for|to)$/

/** True when nothing but one to three words that hold such a name, and small links, stand from the sentence's start to the claim. */
export function followsStrangePart({ from }: Claim, utterance: Utterance): boolean {
  const { words, tokens, entries, leftovers, islands } = utterance
  const mayHoldName = !utterance.isClear || (utterance.traits & trait.partHead) !== 0
  if (from === 0 || !mayHoldName) return false
  const isPaused = from > 0 && isEdgeGap(tokens[from - 1]!.after)
  const start = tokens.findLastIndex((token, at) => at < from - (isPaused ? 1 : 0) && isEdgeGap(token.after)) + 1
  const name = words.slice(start, from).flatMap((word, at) => (links.test(word) ? [] : [start + at]))
  // "on" by itself is also a word for what is done.
  const isWord = (one: Island) =>
    one.from >= start && one.from < from && !(one.to === one.from + 1 && links.test(words[one.from]!))
  if (name.length === 0 || name.length > 3 || islands.some(isWord)) return false
  const isUnknown = (at: number) => leftovers[at] === "unknown"
  const isHead = (at: number) => (entries[at]!.traits & trait.partHead) !== 0
  const isName = name.every((at) => isUnknown(at) || isHead(at))
  return isName && (isHead(name.at(-1)!) || (!isPaused && name.length > 1 && isUnknown(name[0]!)))
}
