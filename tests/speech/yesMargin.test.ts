/** A yes is believed by its lead; every other answer by its margin alone. */
import { expect, test } from "vitest"
import { isFaint } from "../../src/dialogue/needsYes"
import { yesMargin } from "../../src/speech/yesMargin"

test("a yes that hardly leads decides nothing, even said twice", () => {
  const margin = yesMargin("yes", 1.02, 16)
  expect(isFaint(2 * margin)).toBe(true)
})

test("the first that is heard of a voice has to lead further", () => {
  expect(isFaint(yesMargin("yes", 1.9, 63, true))).toBe(true)
  expect(yesMargin("yes", 1.9, 78, true)).toBe(1.9)
})

test("a yes that leads, or has no rival, counts as it fits", () => {
  expect(yesMargin("yes", 0.68, 30)).toBe(0.68)
  expect(yesMargin("that's right", 1.2, null)).toBe(1.2)
})

test("a no and a value are left as they are", () => {
  expect(yesMargin("no", 0.5, 15)).toBe(0.5)
  expect(yesMargin("water ten square", 0.3, 9)).toBe(0.3)
})
