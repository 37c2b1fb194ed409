/** The stretch of sound of lit words, by the ear's own times. */
import { expect, test } from "vitest"
import type { Heard } from "../../src/facts/Heard"
import { litStretch } from "../../src/review/litStretch"

const heard: Heard = {
  id: "h1",
  text: "water ten square, gas ten square",
  alternatives: [],
  words: ["water", "ten", "square", "gas", "ten", "square"].map((text, at) => {
    return { text, start: 10 + at, end: 10.75 + at }
  }),
  start: 10,
  end: 15.75,
  engine: "offline",
  margin: 1,
}

test("the same words in another place of the sentence are told apart", () => {
  const first = [
    { text: "water ten square", lit: true },
    { text: ", gas ten square", lit: false },
  ]
  expect(litStretch(heard, first)).toEqual({ start: 10, end: 12.75 })
  const later = [
    { text: "water ten square, ", lit: false },
    { text: "gas ten square", lit: true },
  ]
  expect(litStretch(heard, later)).toEqual({ start: 13, end: 15.75 })
})

test("a part and its value that lie apart are played from the one to the other", () => {
  const apart = [
    { text: "water", lit: true },
    { text: " ten square, gas ten ", lit: false },
    { text: "square", lit: true },
  ]
  expect(litStretch(heard, apart)).toEqual({ start: 10, end: 15.75 })
})

test("nothing is lit, or there are no times: no stretch", () => {
  expect(litStretch(heard, [{ text: heard.text, lit: false }])).toBeNull()
  expect(litStretch({ ...heard, words: [] }, [{ text: heard.text, lit: true }])).toBeNull()
})
