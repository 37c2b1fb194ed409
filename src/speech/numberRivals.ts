/**
 * What a number may have been instead: the answer with one number word changed or left out, as far as the grammar allows
 * it. Decoded over the same sound it tells how sure the digits are; "fourteen" and "forty" are one breath apart. Words
 * put in are not tried: a short one fits into any glide between two others, and the first decoding has weighed them.
 */

/** Words that stand for digits and numbers in the grammars. */
export const numberWords = [
  ..."zero nought oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen".split(
    " ",
  ),
  ..."sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred".split(" "),
] as const

export const isNumber = (word: string) => (numberWords as readonly string[]).includes(word)

/** Whether more digits could follow, so that the number may not be over yet. */
export const isNumberWord = (word: string) => word === "point" || isNumber(word)

/** Words for one and the same digit: one of them instead of another changes nothing. */
const noughts = ["zero", "nought", "oh"]

/** Every sentence of the grammar that is the answer with one number word changed or left out. */
export const numberRivals = (words: readonly string[], isSentence: (words: readonly string[]) => boolean): string[] => {
  const rivals = words.flatMap((word, at) => {
    if (!isNumber(word)) return []
    const same = noughts.includes(word) ? noughts : [word]
    const [before, after] = [words.slice(0, at), words.slice(at + 1)]
    const others = numberWords.filter((other) => !same.includes(other))
    return [...others.map((other) => [...before, other, ...after]), [...before, ...after]]
  })
  return [...new Set(rivals.filter(isSentence).map((rival) => rival.join(" ")))]
}

/** A grammar of just these sentences, each as likely as the others. */
export const grammarOf = (sentences: readonly string[]): string =>
  `#JSGF V1.0;\ngrammar rivals;\npublic <said> = ${sentences.join(" | ")};\n`
