/**
 * Values offered side by side, in words that sound different. Fifteen and fifty, thirteen and thirty … are the pairs
 * that saying them again never settles, so they are spelled digit by digit.
 */
import type { RecordedFact } from "../facts/Fact"
import { readBack } from "../interpret/readBack"

const digits = ["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]

const isTeenOrTen = (value: unknown): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= 13 && value <= 90

const soundAlike = (a: unknown, b: unknown) =>
  isTeenOrTen(a) && isTeenOrTen(b) && a !== b && (a - 10 === b / 10 || b - 10 === a / 10)

const spell = (value: number) => [...String(value)].map((digit) => digits[Number(digit)]).join(" ")

/** Whether some of them are to be told apart by their digits. */
export const areSpelled = (facts: readonly RecordedFact[]): boolean =>
  facts.some((fact) => facts.some((other) => soundAlike(fact.value, other.value)))

/** The spoken form of each fact; digits where two of them would be mistaken for each other, or where those were asked for. */
export const sayApart = (facts: readonly RecordedFact[], byDigits = false): string[] =>
  facts.map((fact) => {
    const isWhole = typeof fact.value === "number" && Number.isInteger(fact.value)
    const alike = (byDigits && isWhole) || facts.some((other) => soundAlike(fact.value, other.value))
    const words = alike ? spell(fact.value as number) : readBack(fact)
    return words.charAt(0).toLowerCase() + words.slice(1).replace(/[.]+$/, "")
  })
