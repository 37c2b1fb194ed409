/** What the offline ear may hear: small enough to search, all of it sayable, and all of it understood. */
import { readFileSync } from "node:fs"
import { describe, expect, test } from "vitest"
import { seededRandom } from "../../src/cli/grammarTools"
import type { Context } from "../../src/facts/Interpretation"
import { measureGrammar } from "../../src/grammar/measureGrammar"
import { parseJsgf } from "../../src/grammar/parseJsgf"
import { sampleRule } from "../../src/grammar/sampleRule"
import { earRoot } from "../../src/interpret/buildEarGrammar"
import { readGrammarFolder } from "../../src/interpret/GrammarFolder"
import { files, interpreter } from "./interpreter"

const folder = readGrammarFolder(files)
const dictionary = new Set(
  readFileSync("node_modules/soundswallower/model/en-us/dict.txt", "utf8")
    .split("\n")
    .map((line) => line.split(/[\s(]/)[0]!),
)
const phones = new Set(
  "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split(" "),
)

const item = "water"
const contexts: Context[] = [
  {},
  { item, asked: "conductor_csa" },
  { item, asked: "length" },
  { item, asked: "distance" },
  { item, asked: "resistance" },
  { item, asked: "step:clamp_fitted" },
  { item, asked: "service" },
  { asked: "earthing_arrangement" },
  { asked: "neutral_csa" },
  { item, asked: "keep_reason" },
  { item, asked: "sign_off" },
  { item, asked: "check_in" },
  { item, asked: "read_on" },
  { item, asked: "confirm", readback: { kind: "length", value: 7, unit: "m", subject: item } },
  { item, asked: "length", digits: true },
  { item, asked: "distance", digits: true },
  { item, asked: "resistance", digits: true },
  { item, asked: "confirm", readback: { kind: "length", value: 7, unit: "m", subject: item }, digits: true },
]

describe.each(contexts)("the ear's grammar under %j", (context) => {
  const grammar = interpreter.earGrammar(context)
  const root = earRoot(context)

  test("is one flat JSGF with one public rule, no imports, no tags, in lower case", () => {
    const read = parseJsgf(grammar.jsgf, grammar.id)
    expect(read.imports).toEqual([])
    expect(read.rules.filter((rule) => rule.isPublic)).toHaveLength(1)
    expect(grammar.jsgf).not.toMatch(/[{}]/)
    expect(grammar.jsgf.replace("#JSGF V1.0", "")).not.toMatch(/[A-Z]/)
  })

  test("stays small enough to search", () => {
    const { words, arcs } = measureGrammar(folder.set, root)
    expect(words.length).toBeLessThanOrEqual(230)
    expect(arcs).toBeLessThanOrEqual(2850)
  })

  test("has a way to say every word", () => {
    const own = new Set(grammar.pronunciations.map(([word]) => word))
    const { words } = measureGrammar(folder.set, root)
    expect(words.filter((word) => !own.has(word) && !dictionary.has(word))).toEqual([])
  })

  test("holds nothing that the interpreter does not understand", () => {
    const random = seededRandom(11)
    const sentences = Array.from({ length: 150 }, () => sampleRule(folder.set, root, random))
    const dumb = sentences.filter((text) => {
      const { facts, ask, command } = interpreter.interpret(text, context)
      return facts.length === 0 && ask === null && command === null && !isBareAnswer(text)
    })
    expect(dumb).toEqual([])
  })
})

/** A yes, a no or a skip with nothing asked means nothing, on purpose. */
const isBareAnswer = (text: string) =>
  /^(yes|yep|aye|(yes )?correct|(yes )?that's right|spot on|affirmative|no|(no )?that's wrong|wrong|negative|skip|skip this one)$/.test(
    text,
  )

test("every pronunciation uses the phones of the model", () => {
  for (const [word, ways] of folder.pronunciations)
    for (const way of ways)
      expect(
        way.split(" ").filter((phone) => !phones.has(phone)),
        word,
      ).toEqual([])
})

test("the same context gives the same grammar, and another question another one", () => {
  expect(interpreter.earGrammar({ asked: "length" })).toEqual(interpreter.earGrammar({ asked: "length", item }))
  expect(interpreter.earGrammar({ asked: "length" }).id).not.toBe(interpreter.earGrammar({}).id)
})
