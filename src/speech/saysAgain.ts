/** Whether a sentence says over again what was said to be wrong before. */
import { numberWords } from "./numberWords"

/** What stands around a value and is nothing of it. */
const around = /^(no )?(make (that|it) )?(reading )?|( ohms)$/g

/**
 * `wrong` are sentences as they were heard; the value of one may stand in another frame and be said in another way: "make
 * that one five metres" says "fifteen metres" again.
 */
export const saysAgain = (said: string, wrong: readonly string[]): boolean =>
  wrong.some((one) => {
    const value = inFigures(one.replace(around, ""))
    return value !== "" && ` ${inFigures(said)} `.includes(` ${value} `)
  })

const ones = ["nought", ...numberWords.slice(3, 22)]
const tens: readonly string[] = numberWords.slice(22, 30)

/** The figure of one word, or null where it is none. */
const figureOf = (word: string): string | null => {
  if (word === "hundred") return "00"
  if (word === "point") return "."
  if (["nought", "zero", "oh"].includes(word)) return "0"
  const [one, ten] = [ones.indexOf(word), tens.indexOf(word)]
  return one > 0 ? String(one) : ten >= 0 ? String(10 * (ten + 2)) : null
}

/** The words with every number as one figure, however it was said: "one hundred and fifty", "one fifty", "one five oh". */
const inFigures = (sentence: string): string => {
  const all: string[] = []
  for (const word of sentence.replace(/\ba hundred\b/g, "one hundred").split(" ")) {
    const figure = figureOf(word)
    const isOpen = /[\d.]$/.test(all.at(-1) ?? "")
    if (isOpen && figure !== null) all.push(joined(all.pop()!, figure))
    else if (!isOpen || word !== "and") all.push(figure ?? word)
  }
  return all.join(" ").replace(/\bin (\d+)(?: square| mil)*/, "$1 square")
}

/** "three hundred" and "fifty", "twenty" and "two": what ends in noughts enough takes the next figure in their place. */
const joined = (figures: string, next: string): string => {
  const isWhole = !figures.includes(".") && Number(next) > 0
  const room = isWhole && (/00$/.test(figures) ? 2 : /[2-9]0$/.test(figures) ? 1 : 0)
  return room && next.length <= room ? String(Number(figures) + Number(next)) : figures + next
}
