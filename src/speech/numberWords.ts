/** Words that stand for digits and numbers in the grammars, and what a number may have been instead. */

export const numberWords = [
  ..."zero nought oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen".split(
    " ",
  ),
  ..."sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred".split(" "),
] as const

const ones = numberWords.slice(3, 12)
const teens = numberWords.slice(12, 22)
const tens = numberWords.slice(22, 30)

/** One to ninety-nine in words. */
export const wholeNumbers: readonly string[] = [
  ...ones,
  ...teens,
  ...tens.flatMap((ten) => [ten, ...ones.map((one) => `${ten} ${one}`)]),
]

export const isNumber = (word: string) => (numberWords as readonly string[]).includes(word)

/** Whether more digits could follow, so that the number may not be over yet. */
export const isNumberWord = (word: string) => word === "point" || isNumber(word)

/** Words for one and the same digit: one of them instead of another changes nothing. */
const noughts = ["zero", "nought", "oh"]

/** The words with one number word changed or left out; not all of them can be said. */
export const numberRivals = (words: readonly string[]): string[] =>
  words.flatMap((word, at) => {
    if (!isNumber(word)) return []
    const same = noughts.includes(word) ? noughts : [word]
    const [before, after] = [words.slice(0, at), words.slice(at + 1)]
    const others = numberWords.filter((other) => !same.includes(other))
    return [...others.map((other) => [...before, other, ...after]), [...before, ...after]].map((one) => one.join(" "))
  })

/** A grammar of just these sentences, each as likely as the others. */
export const grammarOf = (sentences: readonly string[]): string =>
  `#JSGF V1.0;\ngrammar rivals;\npublic <said> = ${sentences.join(" | ")};\n`
