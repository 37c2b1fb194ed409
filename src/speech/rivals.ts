/**
 * What an answer may have been instead: the same sentence with one word that carries meaning changed or left out, as far
 * as the grammar allows it. A number may have been another ("fourteen", "forty"), a part another part or, at the start,
 * the tens of a number ("water two", "twenty two"), and a yes a no. Words put in are not tried: a short one fits into any
 * glide between two others, and the first decoding has weighed them.
 */
import { isNumber, numberRivals, numberWords, wholeNumbers } from "./numberWords"

/** Names of parts as the grammars have them, each with the other names of the same part. */
const parts: readonly (readonly string[])[] = [
  ["water"],
  ["gas"],
  ["oil"],
  ["steel", "structural steel"],
  ["heating"],
  ["lightning protection"],
  ["earthing conductor", "main earth"],
]
/** Ways of saying yes and no that the ear knows. */
export const yeses: readonly string[] = [
  ...["yes", "yep", "aye", "correct", "that's right", "spot on", "yes that's right", "yes correct", "affirmative"],
]
/** See `yeses`. */
export const noes: readonly string[] = ["no", "wrong", "that's wrong", "no that's wrong", "negative"]
/** Beside the opposite answer, what one short word is mistaken for. */
const shortOnes = [
  ...parts.flat(),
  ...["undo", "skip", "existing", "tns", "tn s", "tncs", "pme", "t t", "say again", "pause", "listen", "read on"],
  ...["louder", "quieter", "slower", "faster"],
]

const units = ["metres", "square"]
/** What was done, each with the other ways of saying it, and sizes: in noise "ten square" came out as "clamp fitted". */
const steps: readonly (readonly string[])[] = [
  ["pipe cleaned", "cleaned the pipe"],
  ["clamp fitted", "clamp on"],
  ["label fitted", "label on"],
]
const sizes = ["four", "six", "ten", "sixteen", "twenty five", "thirty five", "fifty"].map((size) => `${size} square`)

type IsSentence = (words: readonly string[]) => boolean

/** Every sentence of the grammar that means something else and differs from the answer in one place. */
export const rivalsOf = (words: readonly string[], isSentence: IsSentence): string[] => {
  const said = words.join(" ")
  const others = [
    ...answerRivals(said),
    ...partRivals(said),
    ...numberRivals(words),
    ...shortRivals(words),
    ...stepRivals(said),
  ]
  return [...new Set(others)].filter((rival) => rival !== "" && rival !== said && isSentence(rival.split(" ")))
}

const answerRivals = (said: string): string[] => {
  if (yeses.includes(said)) return [...noes, ...shortOnes]
  if (noes.includes(said)) return [...yeses, ...shortOnes]
  if (said.startsWith("no ") && said.split(" ").some(isNumber)) return [...yeses, ...noes]
  return shortOnes.includes(said) ? [...yeses, ...noes, ...shortOnes] : []
}

/** The unit may be what a number ends in, and the number what the unit begins with: "ninety eight" for "five metres". */
const shortRivals = (words: readonly string[]): string[] => {
  const isShort = words.every((word) => isNumber(word) || units.includes(word))
  const value = words.filter(isNumber).join(" ")
  if (!isShort || value === "") return []
  return wholeNumbers
    .filter((other) => other !== value)
    .flatMap((other) => [other, ...units.map((u) => `${other} ${u}`)])
}

const stepRivals = (said: string): string[] => {
  const same = steps.find((ways) => ways.some((way) => said.endsWith(way)))
  const step = same?.find((way) => said.endsWith(way))
  if (step === undefined) return []
  return [...steps.filter((ways) => ways !== same).flat(), ...sizes].map((other) => said.replace(step, other))
}

/** `said` with its part exchanged, and, where it begins with a part or a number, with the one in place of the other. */
const partRivals = (said: string): string[] => {
  const names = parts.flat()
  const named = names.filter((name) => ` ${said} `.includes(` ${name} `)).sort((a, b) => b.length - a.length)[0]
  if (!named) return names.map((name) => said.replace(/^\S+/, name)).filter(() => isNumberAt(said))
  const same = parts.find((group) => group.includes(named))!
  const others = names.filter((name) => !same.includes(name))
  const exchanged = others.map((other) => ` ${said} `.replace(` ${named} `, ` ${other} `).trim())
  const begins = said.startsWith(`${named} `) ? numberWords.map((word) => said.replace(named, word)) : []
  return [...exchanged, ...begins, said.replace(named, "").trim()]
}

const isNumberAt = (said: string) => (numberWords as readonly string[]).includes(said.split(" ")[0]!)
