/**
 * "One nine" as 19, where a value was asked for digit by digit. Only then: elsewhere digits in a row may as well be two
 * numbers that ran together.
 */

const digits: Readonly<Record<string, string>> = Object.fromEntries(
  "zero one two three four five six seven eight nine".split(" ").map((word, digit) => [word, String(digit)]),
)
const digitOf = (word: string): string | undefined => (word === "oh" || word === "nought" ? "0" : digits[word])

/** Words that make the digits before or after them a part of a number that is read otherwise. */
const goesOn = /^(point|hundred|thousand|half|quarter|double|treble|triple)$/

/** The text with each row of two and more spelled digits as one figure. `startsWithNought`: "oh five" is five. */
export const joinDigits = (text: string, startsWithNought: boolean): string => {
  const words = text.split(" ")
  const joined: string[] = []
  for (let at = 0; at < words.length; ) {
    let end = at
    while (end < words.length && digitOf(words[end]!.toLowerCase()) !== undefined) end += 1
    const row = words.slice(at, end).map((word) => digitOf(word.toLowerCase())!)
    const isWhole = row.length > 1 && !goesOn.test(words[at - 1] ?? "") && !goesOn.test(words[end] ?? "")
    if (isWhole && (startsWithNought || row[0] !== "0")) joined.push(String(Number(row.join(""))))
    else joined.push(...words.slice(at, Math.max(end, at + 1)))
    at = Math.max(end, at + 1)
  }
  return joined.join(" ")
}
