/** From a sentence to clips: phrases first, figures as words, unknown words spelled, and nothing left out. */
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { planClips, splitWords } from "../../src/speech/planClips"

const letters = [..."abcdefghijklmnopqrstuvwxyz"].map((letter) => `letter:${letter}`)
const numbers = "nought one two three four five six seven eight nine ten sixteen hundred and point".split(" ")
const known = new Set([...letters, ...numbers, "water", "bond", "square", "is that it", "is", "say", "say undo", "a"])

/** The plan as one line: clips by name, gaps as a blank, comma or stop. */
const show = (sentence: string) =>
  planClips(sentence, known)
    .pieces.map((piece) => {
      if ("clip" in piece) return piece.clip
      if (piece.gapMs >= 400) return "."
      return piece.gapMs >= 200 ? "," : " "
    })
    .join("")

test.each([
  ["Water. Sixteen square.", "water.sixteen square"],
  ["Water bond, nought point nought five", "water bond,nought point nought five"],
  ["water — ten … square", "water,ten.square"],
  ["Water? Is that it?", "water.is that it"],
  ["say undo", "say undo"],
  ["say one", "say one"],
  ["0.05 square", "nought point nought five square"],
  ["0.10", "nought point one nought"],
  ["16", "sixteen"],
  ["007", "nought nought seven"],
  ["1.5.", "one point five"],
  ["water-bond", "water bond"],
  ["", ""],
  ["...", ""],
])("%j becomes %j", (sentence, plan) => {
  expect(show(sentence)).toBe(plan)
  expect(planClips(sentence, known).spelled).toEqual([])
})

test("a word it does not know is spelled, and the gap after it is longer than that of a word", () => {
  const plan = planClips("Water Zoë bond", known)
  expect(plan.spelled).toEqual(["zoë"])
  expect(plan.pieces.flatMap((piece) => ("clip" in piece ? [piece.clip] : []))).toEqual([
    "water",
    "letter:z",
    "letter:o",
    "letter:e",
    "bond",
  ])
  const gaps = plan.pieces.flatMap((piece) => ("gapMs" in piece ? [piece.gapMs] : []))
  expect(gaps.at(-1)).toBeGreaterThan(gaps[0]!)
})

test("a sign without a name is reported", () => {
  expect(planClips("water ☃ bond", known).spelled).toEqual(["☃"])
})

describe("any text", () => {
  test("has every word in its plan, as a clip or as letters, in order", () => {
    const word = fc.constantFrom("water", "bond", "is", "a", "brass", "flange", "6", "1.5", ",", ".", "?")
    fc.assert(
      fc.property(fc.array(word, { maxLength: 12 }), (words) => {
        const { pieces } = planClips(words.join(" "), known)
        const said = pieces.flatMap((piece) => ("clip" in piece ? [piece.clip.replace("letter:", "")] : [])).join("")
        expect(said.replaceAll(" ", "")).toBe(
          splitWords(words.join(" "))
            .join("")
            .replace(/[ .,?]/g, ""),
        )
      }),
    )
  })

  test("never opens or ends with a gap and never has two in a row", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const kinds = planClips(text, known).pieces.map((piece) => ("clip" in piece ? "c" : "g"))
        expect(kinds.join("")).toMatch(/^(c(gc)*)?$/)
      }),
    )
  })
})
