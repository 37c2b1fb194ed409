/** One utterance taken apart: tokens, the numbers in them, the grammar phrases found, and what is left over. */
import type { PlacedTag } from "../grammar/WordRow"
import type { NumberReading } from "./NumberReading"
import type { Token } from "./Token"

/** A grammar phrase found in free speech. Islands never overlap. */
export interface Island {
  /** Full name of the public rule: "steps.clampFitted". */
  rule: string
  from: number
  to: number
  tags: readonly PlacedTag[]
  /** 0 as written, 1 when a sound-alike is in it that counts only if asked, 2 when one always has to be asked. */
  doubt: number
}

/** What a token that no phrase took is. */
export type Leftover = "skippable" | "neutral" | "chatter" | "unknown"

export interface Utterance {
  text: string
  tokens: readonly Token[]
  /** Tokens after spelling is settled. */
  words: readonly string[]
  numbers: readonly NumberReading[]
  islands: readonly Island[]
  /** By token; null where a phrase took it. */
  leftovers: ReadonlyArray<Leftover | null>
}

/** The text after `name=` of the first such tag, or the empty text of a bare tag; undefined when there is none. */
export function tagValue(island: Island, name: string): string | undefined {
  const tag = island.tags.find((one) => one.text === name || one.text.startsWith(`${name}=`))
  return tag?.text.slice(name.length + 1)
}

export const hasTag = (island: Island, name: string): boolean => tagValue(island, name) !== undefined

/** Numbers under a tag, in order. */
export const taggedNumbers = (utterance: Utterance, island: Island, name: string): NumberReading[] =>
  island.tags
    .filter((tag) => tag.text === name)
    .flatMap((tag) => utterance.numbers.filter((one) => one.from >= tag.from && one.to <= tag.to))
