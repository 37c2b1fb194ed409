/** Words of an answer to a question for a time, with small numbers turned into figures: "twenty one" is 21. */
import { sayNumber } from "../facts/sayNumber"
import type { Utterance } from "./Utterance"

const small = new Map(Array.from({ length: 60 }, (_, value) => [sayNumber(value), value] as const))
const ordinals = new Map(
  (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth " +
    "twenty-first twenty-second twenty-third twenty-fourth twenty-fifth twenty-sixth twenty-seventh twenty-eighth twenty-ninth thirtieth thirty-first"
  )
    .split(" ")
    .map((word, at) => [word.replace("-", " "), at + 1] as const),
)
const fillers = new Set(
  "time date ish och aye been gone um uh er erm about around roughly approximately at it it's it'll was is be on say just the that tested test done did i we we'll of so well right yeah yes aye ok okay please think like i'd reckon due next then this time's visit call make come back again would must should for i'll god willing".split(
    " ",
  ),
)
/** Fillers that some phrases need. */
const kept = new Set(["at", "on", "of", "next", "this", "just"])

/** Lower-case words; "twenty one" → "21", "third" → "3rd", without the small words that change nothing. */
export function timeWords(utterance: Utterance): string[] {
  const words = utterance.words.map((word) => word.replace(/'s$/, (end) => (word === "it's" ? end : "")))
  const figures: string[] = []
  for (let at = 0; at < words.length; ) {
    const pair = `${words[at]} ${words[at + 1] ?? ""}`
    const joined = small.get(pair) ?? (ordinals.has(pair) ? `${ordinals.get(pair)}th` : undefined)
    const single = small.get(words[at]!) ?? (ordinals.has(words[at]!) ? `${ordinals.get(words[at]!)}th` : undefined)
    if (joined !== undefined && words[at + 1] !== undefined) {
      figures.push(String(joined))
      at += 2
    } else {
      figures.push(single === undefined ? words[at]! : String(single))
      at += 1
    }
  }
  return joinOrdinals(figures).filter((word) => !fillers.has(word) || kept.has(word))
}

/** "3 rd" is what a tokeniser makes of "3rd". */
const joinOrdinals = (words: readonly string[]): string[] =>
  words.flatMap((word, at) => {
    if (/^(st|nd|rd|th)$/.test(word) && /^\d+$/.test(words[at - 1] ?? "")) return []
    return [/^(st|nd|rd|th)$/.test(words[at + 1] ?? "") && /^\d+$/.test(word) ? `${word}th` : word]
  })

/** Whether the speaker was not sure: then a time is asked about. */
export const isUnsure = (utterance: Utterance): boolean =>
  utterance.words.some((word) =>
    ["maybe", "probably", "perhaps", "possibly", "might", "or", "ish", "think", "reckon", "guess"].includes(word),
  )
