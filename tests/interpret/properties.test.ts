/** Whatever is heard: no throw, no long wait, no number whose digits were not said, nothing the contract does not know. */
import fc from "fast-check"
import { expect, test, vi } from "vitest"
import { Interpretation } from "../../src/facts/Interpretation"
import { measureGrammar } from "../../src/grammar/measureGrammar"
import { longestText } from "../../src/interpret/createInterpreter"
import { readGrammarFolder } from "../../src/interpret/GrammarFolder"
import { files, interpreter } from "./interpreter"

const runs = Number(process.env.BOTHHANDS_RUNS ?? 300)
vi.setConfig({ testTimeout: 10_000 + runs * 30 })

const folder = readGrammarFolder(files)
const vocabulary = [...folder.set.keys()]
  .filter((rule) => /^(size|length|distance|resistance|steps|answers|repairs|guards|parts)\./.test(rule))
  .flatMap((rule) => [...measureGrammar(folder.set, rule).words])
const figures = [
  "0.05",
  "16",
  "0,02",
  "14m",
  ".5",
  "1,200",
  "16:14",
  "½",
  "Ω",
  "mΩ",
  "-",
  "?",
  ".",
  ",",
  "005",
  "10-16",
]
const word = fc.constantFrom(...new Set([...vocabulary, ...figures]))
const sentence = fc.array(word, { maxLength: 24 }).map((words) => words.join(" "))
const context = fc.record(
  {
    asked: fc.constantFrom(
      "conductor_csa",
      "length",
      "distance",
      "resistance",
      "confirm",
      "service",
      "time_of_test",
      "step:label_fitted",
      "next_test",
      "nonsense",
    ),
    item: fc.constantFrom("water", "earthing_conductor"),
    now: fc.constantFrom("2025-10-15T14:52", "not a time"),
  },
  { requiredKeys: [] },
)

test("never throws, and answers in the contract's own shapes", () => {
  fc.assert(
    fc.property(fc.oneof(sentence, fc.string({ unit: "grapheme", maxLength: 80 })), context, (text, under) => {
      const result = interpreter.interpret(text, under)
      expect(Interpretation.safeParse(result).error?.issues ?? []).toEqual([])
    }),
    { numRuns: runs },
  )
})

test("refuses endless text at once, with a question", () => {
  for (const text of ["sixteen mil ".repeat(900_000), "9".repeat(10_000_000), "a".repeat(longestText + 1)]) {
    expect(interpreter.interpret(text)).toMatchObject({ facts: [], ask: { kind: "field" } })
  }
})

/** All digits of a value must stand in the words, in order, zeros aside that a scale word or a point brings. */
const digitsOf = (value: number) => String(value).replace(/[^1-9]/g, "")
const spoken: Record<string, string> = {
  one: "1",
  two: "2",
  three: "3",
  four: "4",
  five: "5",
  six: "6",
  seven: "7",
  eight: "8",
  nine: "9",
}
const saidDigits = (text: string) => {
  const words = interpreter.explain(text).numbers.map((one) => one.words)
  return words
    .join(" ")
    .split(/[ -]/)
    .map((piece) => piece.replace(/\D/g, "") || numberWord(piece))
    .join("")
}
const numberWord = (piece: string): string => {
  const known = folder.numberWords.get(folder.homophones.find((one) => one.heard === piece)?.meant ?? piece)
  return known && known.value > 0 ? String(known.value) : (spoken[piece] ?? "")
}

test("no number is written whose digits were not said", () => {
  fc.assert(
    fc.property(sentence, context, (text, under) => {
      const said = new Set(saidDigits(text))
      const extra = /half|quarter|½|\ba\b|\ban\b|\bone\b|metre|hundred|inch|foot|percent/.test(text)
      for (const fact of interpreter.interpret(text, under).facts) {
        if (typeof fact.value !== "number" || extra) continue
        expect(
          [...digitsOf(fact.value)].every((digit) => said.has(digit)),
          `${text} → ${fact.value}`,
        ).toBe(true)
      }
    }),
    { numRuns: runs },
  )
})

test("where two readings of one sound differ in a number, it asks", () => {
  const heard = {
    id: "h1",
    text: "water sixteen square",
    alternatives: ["water six square"],
    words: [],
    start: 0,
    end: 2,
    engine: "scripted",
    margin: null,
  }
  const { facts, ask } = interpreter.interpret(heard, {})
  expect(facts.some((fact) => fact.kind === "conductor_csa")).toBe(false)
  expect(ask).toMatchObject({ kind: "conductor_csa", candidates: [16, 6] })
  expect(interpreter.interpret({ ...heard, alternatives: ["water sixteen square mil"] }, {}).ask).toBeNull()
})
