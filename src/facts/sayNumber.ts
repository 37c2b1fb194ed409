/**
 * Numbers as they are spoken on a British site: "nought point nought five", "six hundred". Decimals are taken digit by
 * digit from the shortest decimal text of the number, so that what is said is what is written, and never its binary tail.
 */
import { toCardinal } from "n2words/en-GB"

const digitWords = ["nought", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"] as const

/** Plain decimal text of a number whose shortest text may carry an exponent. */
const toPlain = (value: number): string => {
  const [mantissa = "", exponent] = String(value).split("e-")
  if (exponent === undefined) return Number.isInteger(value) ? BigInt(value).toString() : mantissa
  return value.toFixed(Math.min(100, Number(exponent) + (mantissa.split(".")[1] ?? "").length))
}

/**
 * The words for a finite number, nought or more, in lower case and without hyphens. `places` fixes the digits after the
 * point (0.1 with 2 places: "nought point one nought"); without it there are as many as the number has. Throws on what
 * cannot be a measured value.
 */
export const sayNumber = (value: number, places?: number): string => {
  if (!Number.isFinite(value) || value < 0) throw new Error(`No words for ${value}`)
  const [whole = "0", digits = ""] = (places === undefined ? toPlain(value) : value.toFixed(places)).split(".")
  const wholeWords = whole === "0" ? "nought" : toCardinal(whole).replaceAll("-", " ")
  return digits === "" ? wholeWords : `${wholeWords} point ${sayDigits(digits)}`
}

/** Digits said one by one: "600" is "six nought nought". */
export const sayDigits = (digits: string): string => [...digits].map((digit) => digitWords[Number(digit)]).join(" ")
