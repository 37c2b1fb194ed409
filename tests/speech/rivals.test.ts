/** Which other numbers an answer is weighed against, and whether a sentence is in a grammar at all. */
import { describe, expect, test } from "vitest"
import { accepts, readFlatGrammar } from "../../src/speech/flatGrammar"
import { headStart } from "../../src/speech/headStart"
import { grammarOf } from "../../src/speech/numberWords"
import { rivalsOf } from "../../src/speech/rivals"

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
  expect(rivalsOf(words("zero point one two ohms"), isIn)).toEqual([
    "zero point two two ohms",
    "zero point three two ohms",
    "zero point two ohms",
    "zero point one one ohms",
    "zero point one three ohms",
    "zero point one ohms",
  ])
  expect(rivalsOf(words("thirteen metres"), isIn)).toEqual(["thirty metres"])
  expect(rivalsOf(words("no no"), isIn)).toEqual([])
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

test("a bare answer and a reading under an ohm have a head start, and nothing else has", () => {
  const [ahead, level] = [
    ["yes", "no", "that's right", "nought point nine five ohms", "make that zero point one two"],
    ["no eight", "nine point nine five ohms", "water", "nine and a half metres", "yes mate"],
  ]
  expect(ahead.map((said) => headStart(said) > 0)).toEqual(ahead.map(() => true))
  expect(level.map(headStart)).toEqual(level.map(() => 0))
})

describe("what carries no number has rivals too", () => {
  const talk = readFlatGrammar(`#JSGF V1.0;
grammar talk;
<part> = water | gas | structural steel | steel;
public <said> = yes | no | correct | undo | <part> | [<part>] (two | twenty two | twelve) metres | <part> clamp fitted;
`)!
  const inTalk = (sentence: readonly string[]) => accepts(talk, sentence)
  test.each([
    ["yes", ["no", "water", "gas", "steel", "structural steel", "undo"]],
    ["no", ["yes", "correct", "water", "gas", "steel", "structural steel", "undo"]],
    ["steel clamp fitted", ["water clamp fitted", "gas clamp fitted"]],
    ["water", ["yes", "correct", "no", "gas", "steel", "structural steel"]],
  ])("%s", (said, rivals) => {
    expect(rivalsOf(words(said), inTalk)).toEqual(rivals)
  })
  test("a number after a no may have been no number, and a short number any other with its unit", () => {
    const answers = readFlatGrammar(`#JSGF V1.0;
grammar answers;
public <said> = yes | no | [no] (eight | eighteen) | (five | ninety eight) [metres];
`)!
    const inAnswers = (sentence: readonly string[]) => accepts(answers, sentence)
    expect(rivalsOf(words("no eight"), inAnswers)).toEqual(["yes", "no", "no eighteen"])
    expect(rivalsOf(words("ninety eight"), inAnswers)).toEqual(["eight", "five", "five metres", "eighteen"])
  })
  test("a part at the start may have been the tens of a number, and tens a part", () => {
    expect(rivalsOf(words("water two metres"), inTalk)).toEqual(
      expect.arrayContaining(["twenty two metres", "two metres"]),
    )
    expect(rivalsOf(words("twenty two metres"), inTalk)).toContain("gas two metres")
  })
})

test("a yes and a no are weighed against each other, however they are said, and against the short words of a supply", () => {
  const isAny = () => true
  expect(rivalsOf(words("yes that's right"), isAny)).toEqual(
    expect.arrayContaining(["no", "no that's wrong", "negative"]),
  )
  expect(rivalsOf(words("no that's wrong"), isAny)).toEqual(expect.arrayContaining(["yes", "yes that's right"]))
  expect(rivalsOf(words("tns"), isAny)).toEqual(expect.arrayContaining(["no", "yes"]))
})
