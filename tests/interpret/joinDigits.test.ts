/** Digits in a row are one number only where they were asked for; made up, no source. */
import { expect, test } from "vitest"
import { joinDigits } from "../../src/interpret/joinDigits"
import { interpreter } from "./interpreter"

test.each([
  ["one nine metres", "19 metres"],
  ["make that two oh", "make that 20"],
  ["oh five", "5"],
  ["one five zero mil", "150 mil"],
  ["one two point five metres", "one two point five metres"],
  ["nought point nought five ohms", "nought point nought five ohms"],
  ["two hundred and five", "two hundred and five"],
  ["five metres", "five metres"],
  ["", ""],
])("%j is read as %j", (said, read) => {
  expect(joinDigits(said, true)).toBe(read)
})

test("a reading never loses its noughts", () => {
  expect(joinDigits("nought nought five ohms", false)).toBe("nought nought five ohms")
})

test.each([
  ["length", "one nine", { kind: "length", value: 19, unit: "m" }],
  ["distance", "one five oh", { kind: "distance", value: 150, unit: "mm" }],
])("asked for the %s, digits are a value where they were asked for and else in doubt", (asked, said, fact) => {
  const item = "water"
  expect(interpreter.interpret(said, { asked, item, digits: true }).facts).toEqual([{ ...fact, subject: item }])
  expect(interpreter.interpret(said, { asked, item })).toMatchObject({ facts: [], ask: { kind: asked } })
})
