/**
 * What a number may have been instead: the answer with one number word changed, left out or put in. Decoded over the
 * same sound it tells how sure the digits are; "fourteen" and "forty" are one breath apart.
 */

/** Words that stand for digits and numbers in the grammars. */
export const numberWords = [
  ..."zero nought oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen".split(
    " ",
  ),
  ..."sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred".split(" "),
] as const

/** Whether more digits could follow, so that the number may not be over yet. */
export const isNumberWord = (word: string) => word === "point" || isNumber(word)

const isNumber = (word: string) => (numberWords as readonly string[]).includes(word)

/** A grammar of everything one number word away from the answer, or null where it holds no number word. */
export const rivalGrammar = (words: readonly string[], known: (word: string) => boolean): string | null => {
  const spoken = numberWords.filter(known)
  const variants = words.flatMap((word, at) => {
    if (!isNumber(word)) return []
    const before = words.slice(0, at).join(" ")
    const after = words.slice(at + 1).join(" ")
    const others = spoken.filter((other) => other !== word).join(" | ")
    const put = `${before} ${word} <n> ${after}`
    const first = at > 0 && isNumber(words[at - 1]!) ? [] : [`${before} <n> ${word} ${after}`]
    const dropped = words.length > 1 ? [`${before} ${after}`] : []
    return [`${before} (${others}) ${after}`, put, ...first, ...dropped]
  })
  if (variants.length === 0) return null
  return `#JSGF V1.0;\ngrammar rivals;\npublic <s> = ${variants.join(" | ")};\n<n> = ${spoken.join(" | ")};\n`
}
