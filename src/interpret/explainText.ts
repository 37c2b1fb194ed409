/** Why a text was read the way it was: its tokens, numbers and phrases, and what came of them. */
import type { Context, Interpretation } from "../facts/Interpretation"
import { interpretText } from "./interpretText"
import type { Language } from "./Language"
import { readUtterance } from "./readUtterance"

export interface Explanation {
  words: readonly string[]
  numbers: ReadonlyArray<{ words: string; value: number; doubt: string | null }>
  phrases: ReadonlyArray<{ rule: string; words: string; tags: readonly string[] }>
  /** Words that no phrase took and that the lists do not know. */
  unknown: readonly string[]
  result: Interpretation
}

/** Explains one text under one context. */
export function explainText(text: string, context: Context, language: Language): Explanation {
  const utterance = readUtterance(text, language, context.asked)
  const wordsOf = (from: number, to: number) => utterance.words.slice(from, to).join(" ")
  return {
    words: utterance.words,
    numbers: utterance.numbers.map((one) => ({
      words: wordsOf(one.from, one.to),
      value: one.value,
      doubt: one.doubt?.because ?? null,
    })),
    phrases: utterance.islands.map((one) => ({
      rule: one.rule,
      words: wordsOf(one.from, one.to),
      tags: one.tags.map((tag) => tag.text),
    })),
    unknown: utterance.words.filter(
      (_, at) => utterance.leftovers[at] === "unknown" || utterance.leftovers[at] === "chatter",
    ),
    result: interpretText(text, context, language),
  }
}
