/**
 * Numbers as they are read aloud on site: whole numbers in British words, decimals digit by digit with "nought". Works
 * on the shortest decimal text of the number, so that no binary fraction is ever spoken.
 */

const digits = ["nought", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
const teens = "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ")
const tens = ["", "", ..."twenty thirty forty fifty sixty seventy eighty ninety".split(" ")]

/** Words for a number from 0 up to, but not, a thousand million. */
export function sayNumber(value: number): string {
  const [whole, decimals] = toDecimalText(value).split(".")
  const words = sayWhole(Number(whole))
  return decimals ? `${words} point ${sayDigits(decimals)}` : words
}

/** Every digit by itself: "one four". How a number is said when it was refused once. */
export const sayDigits = (text: string): string =>
  [...text].map((digit) => (digit === "." ? "point" : digits[Number(digit)]!)).join(" ")

/** The shortest decimal text without an exponent: 0.00002 rather than 2e-5. */
export function toDecimalText(value: number): string {
  const text = String(value)
  return text.includes("e") ? value.toFixed(12).replace(/\.?0+$/, "") : text
}

function sayWhole(value: number): string {
  if (value < 10) return digits[value]!
  if (value < 20) return teens[value - 10]!
  if (value < 100) return join(tens[Math.floor(value / 10)]!, " ", value % 10)
  if (value < 1000) return join(`${hundredsOf(value)} hundred`, " and ", value % 100)
  if (value < 1_000_000) return joinThousands(value, 1000, "thousand")
  return joinThousands(value, 1_000_000, "million")
}

const hundredsOf = (value: number) => (Math.floor(value / 100) === 1 ? "a" : digits[Math.floor(value / 100)]!)

const joinThousands = (value: number, scale: number, name: string) =>
  join(
    `${sayWhole(Math.floor(value / scale)).replace(/^a /, "one ")} ${name}`,
    value % scale < 100 ? " and " : " ",
    value % scale,
  )

const join = (head: string, glue: string, rest: number) =>
  rest === 0 ? head : `${head}${glue}${sayWhole(rest).replace(/^a /, "one ")}`
