/** Which other numbers an answer is weighed against, and whether a sentence is in a grammar at all. */
import { describe, expect, test } from "vitest"
import { accepts, readFlatGrammar } from "../../src/speech/flatGrammar"
import { grammarOf, numberRivals } from "../../src/speech/numberRivals"

const jsgf = `#JSGF V1.0 UTF-8 en-GB;
grammar trial;
// A comment with <rules> = in it;
<digit> = one | two | three;
<nought> = nought | zero;
<reading> = <nought> point <digit> [<digit>] {ohms};
public <said> = /4/ <reading> [ohms] | (thirteen | thirty) metres | no+ | <NULL>;
`
const automaton = readFlatGrammar(jsgf)!
const isIn = (sentence: readonly string[]) => accepts(automaton, sentence)
const words = (text: string) => text.split(" ").filter(Boolean)

describe("a sentence is in the grammar", () => {
  test.each(["zero point one", "nought point three two ohms", "thirty metres", "no no no", ""])("%j", (text) => {
    expect(isIn(words(text))).toBe(true)
  })
})
describe("a sentence is not in the grammar", () => {
  test.each(["zero point", "point one", "thirty", "zero point one two three", "no thirty metres", "ohms"])(
    "%j",
    (text) => {
      expect(isIn(words(text))).toBe(false)
    },
  )
})

test("only sentences of the grammar are rivals, and nought for zero is none", () => {
  expect(numberRivals(words("zero point one two ohms"), isIn)).toEqual([
    "zero point two two ohms",
    "zero point three two ohms",
    "zero point two ohms",
    "zero point one one ohms",
    "zero point one three ohms",
    "zero point one ohms",
  ])
  expect(numberRivals(words("thirteen metres"), isIn)).toEqual(["thirty metres"])
  expect(numberRivals(words("no no"), isIn)).toEqual([])
})

test("a grammar of sentences holds just those", () => {
  const among = readFlatGrammar(grammarOf(["thirteen metres", "thirty metres"]))!
  expect(accepts(among, words("thirty metres"))).toBe(true)
  expect(accepts(among, words("thirteen thirty metres"))).toBe(false)
  // Start, two numbers that lead to the same, and the end.
  expect(among.arcs).toHaveLength(3)
})

test("what is no grammar is no automaton", () => {
  const rule = (body: string) => readFlatGrammar(`#JSGF V1.0;\ngrammar g;\n${body}`)
  expect(readFlatGrammar("yes no")).toBeNull()
  expect(rule("<g> = yes;")).toBeNull()
  expect(rule("public <g> = yes <missing>;")).toBeNull()
  expect(rule("public <g> = yes [<g>];")).toBeNull()
  expect(rule("public <g> = (yes | no;")).toBeNull()
})
