/** Numbers are said exactly as they are written; whole numbers come from a library. */
import { expect, test } from "vitest"
import { sayNumber } from "../../src/facts/sayNumber"

test.each([
  [0, "nought"],
  [0.05, "nought point nought five"],
  [0.1, "nought point one"],
  [0.3, "nought point three"],
  [1.15, "one point one five"],
  [1.5, "one point five"],
  [10, "ten"],
  [14.5, "fourteen point five"],
  [26, "twenty six"],
  [99.9, "ninety nine point nine"],
  [104, "one hundred and four"],
  [600, "six hundred"],
  [1667, "one thousand six hundred and sixty seven"],
  [22000, "twenty two thousand"],
  [1e21, "one sextillion"],
  [0.0000005, "nought point nought nought nought nought nought nought five"],
])("%d is said %s", (value, words) => {
  expect(sayNumber(value)).toBe(words)
})

test("places fix the digits, so that a meter's last nought is said", () => {
  expect(sayNumber(0.1, 2)).toBe("nought point one nought")
  expect(sayNumber(0, 2)).toBe("nought point nought nought")
  expect(sayNumber(12, 1)).toBe("twelve point nought")
})

test("every reading of two places from 0.00 to 9.99 says its own digits", () => {
  const names = ["nought", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
  for (let hundredths = 0; hundredths < 1000; hundredths++) {
    const [whole, tens, units] = [Math.floor(hundredths / 100), Math.floor(hundredths / 10) % 10, hundredths % 10]
    expect(sayNumber(hundredths / 100, 2)).toBe(`${names[whole]} point ${names[tens]} ${names[units]}`)
  }
})

test.each([Number.NaN, Number.POSITIVE_INFINITY, -1])("%d has no words", (value) => {
  expect(() => sayNumber(value)).toThrow()
})
