/** The grammar reader on small grammars of its own: it knows no electricity. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { seededRandom } from "../../src/cli/grammarTools"
import { flattenGrammar } from "../../src/grammar/flattenGrammar"
import { GrammarError } from "../../src/grammar/GrammarError"
import { GrammarMatcher } from "../../src/grammar/GrammarMatcher"
import { linkGrammars } from "../../src/grammar/linkGrammars"
import { measureGrammar } from "../../src/grammar/measureGrammar"
import { PhraseFinder } from "../../src/grammar/PhraseFinder"
import { parseJsgf } from "../../src/grammar/parseJsgf"
import { sampleRule } from "../../src/grammar/sampleRule"
import type { WordRow } from "../../src/grammar/WordRow"

const colours = `#JSGF V1.0 UTF-8 en;
grammar colours;
/** A colour. */
public <colour> = /3/ Red {hue=0} | /1/ light green {hue=120};
`
const doors = `#JSGF V1.0 UTF-8 en;
grammar doors;
import <colours.colour>;
// A comment; with | signs.
/**
 * Opens doors.
 * @example open the red door
 * @example open red doors
 */
public <open> = open [the] <colours.colour> (door | doors) {act=open} [please]* | (shut)+;
`
const set = linkGrammars([parseJsgf(doors, "doors.jsgf"), parseJsgf(colours, "colours.jsgf")])

const matcher = new GrammarMatcher(set, new Set())
const formsOf = (words: readonly string[], from = matcher) =>
  words.map((word) => [{ word: from.words.idOf(word), doubt: 0 }])
const rowOf = (text: string, more: Partial<WordRow> = {}): WordRow => {
  const words = text.split(" ")
  return {
    length: words.length,
    forms: formsOf(words),
    isSkippable: () => false,
    isEdge: () => false,
    given: () => undefined,
    ...more,
  }
}
const match = (text: string, more?: Partial<WordRow>) => matcher.over(rowOf(text, more)).match("doors.open", 0)

test("reads doc comments, examples, imports, weights, tags and repeats", () => {
  const file = parseJsgf(doors, "doors.jsgf")
  expect(file).toMatchObject({ name: "doors", language: "en", imports: ["colours.colour"] })
  expect(file.rules[0]).toMatchObject({
    name: "open",
    isPublic: true,
    about: "Opens doors.",
    examples: ["open the red door", "open red doors"],
  })
  expect(parseJsgf(colours, "colours.jsgf").rules[0]!.expansion).toMatchObject({ type: "choice", weights: [3, 1] })
})

test("matches words; a tag stands on the one part before it", () => {
  const [found] = match("open the light green door").filter((one) => one.end === 5)
  expect(found!.tags).toEqual([
    { text: "hue=120", from: 3, to: 4 },
    { text: "act=open", from: 4, to: 5 },
  ])
  expect(match("open the blue door")).toEqual([])
  expect(match("shut shut shut").map((one) => one.end)).toEqual([1, 2, 3])
})

test("steps over small words inside a phrase, but never over an edge", () => {
  const skipEr = { isSkippable: (at: number) => at === 1 }
  expect(match("open er red door", skipEr).map((one) => one.end)).toEqual([4])
  expect(match("open er red door", { ...skipEr, isEdge: (at) => at === 2 })).toEqual([])
  expect(match("open red er door", { isSkippable: (at) => at === 2 }).map((one) => one.end)).toEqual([4])
})

test("takes the reading with less doubt", () => {
  const [open, read, red, door] = formsOf(["open", "read", "red", "door"]).flat()
  const forms = [[open!], [read!, { ...red!, doubt: 2 }], [door!]]
  expect(match("x x x", { forms })[0]).toMatchObject({ end: 3, doubt: 2 })
})

test("a rule that the caller reads itself is asked for and not looked up", () => {
  const given = new GrammarMatcher(set, new Set(["colours.colour"]))
  const row = rowOf("open mauve door", {
    forms: formsOf(["open", "<colours.colour>", "door"], given),
    given: (rule, at) => (rule !== "colours.colour" ? undefined : at === 1 ? [{ end: 2, tags: [] }] : []),
  })
  expect(given.over(row).match("doors.open", 0)[0]).toMatchObject({ end: 3 })
  const finder = new PhraseFinder(given, ["doors.open"])
  const classes = ["open", "mauve", "door"].map((word) => finder.classOf(formsOf([word], given).flat(), false))
  const found = finder.find({ classes, givenEnds: [0, 2, 0], isEdge: () => false })
  expect(found).toEqual([{ rule: 0, from: 0, to: 3, doubt: 0 }])
})

test("the walk over all rules at once finds what the matcher finds rule by rule", () => {
  const finder = new PhraseFinder(matcher, ["doors.open", "colours.colour"])
  const words = fc.constantFrom("open", "the", "er", "red", "light", "green", "door", "doors", "please", "shut", "moon")
  fc.assert(
    fc.property(fc.array(words, { maxLength: 9 }), fc.nat(9), (said, edge) => {
      const isEr = (at: number) => said[at] === "er"
      const row = rowOf(said.join(" "), { length: said.length, isSkippable: isEr, isEdge: (at) => at === edge })
      const session = matcher.over({ ...row, forms: formsOf(said) })
      const slowly = said.flatMap((_, from) =>
        ["doors.open", "colours.colour"].flatMap((name, rule) =>
          session.match(name, from).map(({ end, doubt }) => ({ rule, from, to: end, doubt })),
        ),
      )
      const classes = said.map((word, at) => finder.classOf(formsOf([word]).flat(), isEr(at)))
      const found = finder.find({ classes, givenEnds: said.map(() => 0), isEdge: (at) => at === edge })
      expect(new Set(found.map((one) => JSON.stringify(one)))).toEqual(
        new Set(slowly.map((one) => JSON.stringify(one))),
      )
    }),
  )
})

test("flattens to one text with one public rule, without tags or imports, that reads back as the same sentences", () => {
  const flat = flattenGrammar(set, "doors.open", "flat")
  expect(flat).not.toMatch(/import|[{}]/)
  const again = linkGrammars([parseJsgf(flat, "flat")])
  expect([...again.values()].filter((rule) => rule.isPublic)).toHaveLength(1)
  expect(measureGrammar(again, "flat.r0")).toEqual(measureGrammar(set, "doors.open"))
})

test("samples only what it can match, the same for the same seed", () => {
  const sample = (seed: number) => {
    const random = seededRandom(seed)
    return Array.from({ length: 50 }, () => sampleRule(set, "doors.open", random))
  }
  expect(sample(4)).toEqual(sample(4))
  for (const text of sample(4))
    expect(
      match(text).some((one) => one.end === text.split(" ").length),
      text,
    ).toBe(true)
})

test.each([
  ["no header", "grammar x;\npublic <a> = b;"],
  ["an open bracket", "#JSGF V1.0;\ngrammar x;\npublic <a> = [b;"],
  ["an empty alternative", "#JSGF V1.0;\ngrammar x;\npublic <a> = b | ;"],
])("refuses %s with file and line", (_, text) => {
  expect(() => parseJsgf(text, "x.jsgf")).toThrow(GrammarError)
})

test.each([
  ["a rule that is not there", "public <a> = <b>;", /<b> is not defined/],
  ["a rule that begins with itself", "public <a> = [c] <a> b | d;", /begins with itself/],
  ["a rule defined twice", "<a> = b; <a> = c;", /defined twice/],
  ["a hidden rule of another file", "import <colours.*>;\npublic <a> = <colours.hidden>;", /not defined/],
  ["a rule that was not imported", "public <a> = <colours.colour>;", /not imported/],
])("refuses %s", (_, body, problem) => {
  const file = parseJsgf(`#JSGF V1.0;\ngrammar x;\n${body}`, "x.jsgf")
  expect(() => linkGrammars([file, parseJsgf(colours, "colours.jsgf")])).toThrow(problem)
})
