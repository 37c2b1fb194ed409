/** One utterance taken apart: tokens, the numbers in them, the grammar phrases found, and what is left over. */
import type { PlacedTag } from "../grammar/WordRow"
import type { Leftover } from "./Leftover"
import type { WordEntry } from "./Lexicon"
import type { NumberReading } from "./NumberReading"
import type { Token } from "./Token"

/** A grammar phrase found in free speech. Islands never overlap. */
export interface Island {
  /** Full name of the public rule: "steps.clampFitted". */
  rule: string
  from: number
  to: number
  /** Places count from the first word of the phrase. */
  tags: readonly PlacedTag[]
  /** What stands behind the "=" of each tag, or the empty text, by its name. */
  said: ReadonlyMap<string, string>
  /** 0 as written, 1 when a sound-alike is in it that counts only if asked, 2 when one always has to be asked. */
  doubt: number
  /** The bit of the rule's grammar; see `bitsOf`. */
  grammar: number
}

export interface Utterance {
  text: string
  tokens: readonly Token[]
  /** Tokens after spelling is settled. */
  words: readonly string[]
  /** What is known of each word. */
  entries: readonly WordEntry[]
  numbers: readonly NumberReading[]
  islands: readonly Island[]
  /** By token; null where a phrase took it. */
  leftovers: ReadonlyArray<Leftover | null>
  /** Whether no word is left over that nobody knows or that is talk of something else. */
  isClear: boolean
  /** Bits of the grammars that the phrases come from. */
  grammars: number
  /** Traits of all words together; see `trait`. */
  traits: number
}

/** The text after `name=` of the first such tag, or the empty text of a bare tag; undefined when there is none. */
export const tagValue = (island: Island, name: string): string | undefined => island.said.get(name)

export const hasTag = (island: Island, name: string): boolean => island.said.has(name)

/** Numbers under a tag, in order. */
export function taggedNumbers(utterance: Utterance, island: Island, name: string): NumberReading[] {
  const found: NumberReading[] = []
  for (const tag of island.tags) {
    if (tag.text !== name) continue
    for (const one of utterance.numbers)
      if (one.from >= island.from + tag.from && one.to <= island.from + tag.to) found.push(one)
  }
  return found
}
