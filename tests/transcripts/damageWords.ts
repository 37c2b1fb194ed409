/**
 * Damages words of a transcript as recognisers do, from a seed: a word is dropped, changes places with its neighbour, is
 * written as one that sounds like it, runs into the next one, or is a number and becomes another that is easily taken
 * for it. The last kind can leave a good sentence with another value in it, and so can a dropped word.
 */
import { readFileSync } from "node:fs"
import { seededRandom } from "../../src/cli/grammarTools"
import { readHomophones } from "../../src/interpret/readHomophones"

export const damageKinds = ["dropped", "swapped", "sound-alike", "glued", "number"] as const
export type DamageKind = (typeof damageKinds)[number]

export interface Damaged {
  text: string
  kinds: DamageKind[]
}

/** Number words that are taken for each other by ear: common practice, no source. */
const confusable: readonly (readonly [string, string])[] = [
  ["fifteen", "fifty"],
  ["thirteen", "thirty"],
  ["fourteen", "forty"],
  ["sixteen", "sixty"],
  ["seventeen", "seventy"],
  ["eighteen", "eighty"],
  ["nineteen", "ninety"],
  ["four", "oh"],
  ["five", "nine"],
  ["two", "three"],
  ["seven", "eleven"],
  ["six", "sixteen"],
]

const numberFor = new Map(confusable.flatMap(([one, other]) => [[one, other] as const, [other, one] as const]))

const soundAlikes = (): ReadonlyMap<string, string[]> => {
  const found = new Map<string, string[]>()
  for (const { heard, meant } of readHomophones(readFileSync("grammars/homophones.tsv", "utf8"))) {
    if (heard.includes(" ") || meant.includes(" ") || heard === meant) continue
    found.set(meant, [...(found.get(meant) ?? []), heard])
  }
  return found
}

type Random = () => number
const pick = <T>(from: readonly T[], random: Random): T => from[Math.floor(random() * from.length)]!

/** Damages one word in place, and gives the kind; `words` may lose one. */
const damageAt = (words: string[], at: number, alikes: ReadonlyMap<string, string[]>, random: Random): DamageKind => {
  const word = words[at]!.toLowerCase().replace(/[.,?!]$/, "")
  const number = numberFor.get(word)
  const alike = alikes.get(word)
  const hasNext = at + 1 < words.length
  const possible: DamageKind[] = [
    "dropped",
    ...(hasNext ? (["swapped", "glued"] as const) : []),
    ...(alike ? (["sound-alike"] as const) : []),
    ...(number ? (["number"] as const) : []),
  ]
  const kind = pick(possible, random)
  if (kind === "dropped") words.splice(at, 1)
  else if (kind === "swapped") words.splice(at, 2, words[at + 1]!, words[at]!)
  else if (kind === "glued") words.splice(at, 2, words[at]! + words[at + 1]!)
  else words[at] = kind === "number" ? number! : pick(alike!, random)
  return kind
}

/** Damages about `share` of all words of these lines. The same seed gives the same damage. */
export const damageLines = (lines: readonly string[], share: number, seed: number): Damaged[] => {
  const random = seededRandom(seed)
  const alikes = soundAlikes()
  return lines.map((line) => {
    const words = line.split(/\s+/)
    const kinds: DamageKind[] = []
    for (let at = 0; at < words.length; at++) {
      if (random() >= share) continue
      const kind = damageAt(words, at, alikes, random)
      kinds.push(kind)
      if (kind === "dropped") at--
      if (kind === "swapped") at++
    }
    return { text: words.join(" "), kinds }
  })
}
