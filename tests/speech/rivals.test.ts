/** What an answer is weighed against and how, and whether a sentence is in a grammar at all. */
import { describe, expect, test } from "vitest"
import { readAwaited } from "../../src/speech/awaited"
import { accepts, readFlatGrammar } from "../../src/speech/flatGrammar"
import { headStart, soundStart } from "../../src/speech/headStart"
import { grammarOf } from "../../src/speech/numberWords"
import { rivalsOf } from "../../src/speech/rivals"
import { saysAgain } from "../../src/speech/saysAgain"

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

describe("beside its sound an answer is chosen by how likely it is to be said", () => {
  const moment = { isAwaited: () => false, isUnlikely: () => false, noise: 0 }
  const startOf = (said: string) => headStart(said, moment)
  test("a reading under an ohm goes first, and one under a tenth of an ohm before that", () => {
    expect(startOf("make that zero point one two")).toBeGreaterThan(startOf("nine point one two"))
    expect(startOf("nought point nought five ohms")).toBeGreaterThan(startOf("nought point nine five ohms"))
  })
  test.each(["no eight", "nine point nine five ohms", "water", "nine and a half metres", "fifty mil", "yes"])(
    "nothing is made of %s",
    (said) => {
      expect(startOf(said)).toBe(0)
    },
  )
  test("a length or a distance that hardly is one goes last", () => {
    expect(startOf("ninety metres")).toBeLessThan(0)
    expect(startOf("fifteen mil off the meter")).toBeLessThan(startOf("fifty mil off the meter"))
  })
  test("what is awaited goes before what is not, and a bare yes or no before what else is awaited", () => {
    const asked = { ...moment, isAwaited: (said: string) => said !== "no eight" }
    expect(headStart("water", asked)).toBeGreaterThan(headStart("no eight", asked))
    expect(headStart("no", asked)).toBeGreaterThan(headStart("water", asked))
  })
  test("what was said to be wrong goes last of all", () => {
    const again = { ...moment, isUnlikely: (said: string) => said === "nought point nought five ohms" }
    expect(headStart("nought point nought five ohms", again)).toBeLessThan(
      headStart("nought point nine five ohms", again),
    )
  })
  test("only the end of a teen before metres is put right as a sound, and further in noise", () => {
    const inNoise = { ...moment, noise: 1 }
    expect(soundStart("gas bond fifteen metres", inNoise)).toBeGreaterThan(
      soundStart("gas bond fifteen metres", moment),
    )
    expect(["fifteen square", "fifty metres", "fifteen mil"].map((said) => soundStart(said, inNoise))).toEqual([
      0, 0, 0,
    ])
  })
})

describe("what a question waits for", () => {
  const awaited = readAwaited(`#JSGF V1.0;
grammar asked;
public <r0> = (/4/ <r1> [metres | (long | short)] | /1/ <r2> | /4/ none | /0.5/ yes);
<r1> = one | two;
<r2> = undo | /4/ never;
`)!
  test.each([
    ["two", true],
    ["one short", true],
    ["none", true],
    ["undo", false],
    ["never", false],
    ["yes", false],
  ])("%s", (said, is) => {
    expect(accepts(awaited, words(said))).toBe(is)
  })
  test("nothing where no answer weighs more than another, and where the text is no grammar", () => {
    expect(readAwaited("#JSGF V1.0;\ngrammar g;\npublic <r0> = (yes | no);\n")).toBeNull()
    expect(readAwaited("yes | no")).toBeNull()
  })
})

test.each([
  ["one five oh mil", "one hundred and fifty mil", true],
  ["make that one five metres", "fifteen metres", true],
  ["make that four hundred and fifty mil", "no make that four fifty mil", true],
  ["nought point nought two", "make that zero point oh two ohms", true],
  ["water bond ten square", "water bond in ten", true],
  ["water bond ten square", "water", true],
  ["twenty five metres", "five metres", false],
  ["nought point nought two five ohms", "nought point nought two", false],
  ["steel bond ten square", "water bond ten square", false],
  ["ten metres", "", false],
])("after it was said to be wrong: %s beside %s says it again: %s", (said, wrong, isAgain) => {
  expect(saysAgain(said, [wrong])).toBe(isAgain)
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
    ["water", ["yes", "correct", "no", "gas", "steel", "structural steel", "undo"]],
  ])("%s", (said, rivals) => {
    expect(rivalsOf(words(said), inTalk)).toEqual(rivals)
  })
  test("a step may have been another, or a size, and is not weighed against its own other name", () => {
    const isOf =
      (...sentences: string[]) =>
      (said: readonly string[]) =>
        sentences.includes(said.join(" "))
    const inGrammar = isOf("water bond ten square", "water bond clamp on", "water bond label fitted")
    expect(rivalsOf(words("water bond clamp fitted"), inGrammar)).toEqual([
      "water bond label fitted",
      "water bond ten square",
    ])
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
