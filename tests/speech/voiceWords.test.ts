/**
 * The fallback voice has a clip for every word that the app can say, so that nothing but a worker's own words is ever
 * spelled out. A failure lists the words to be added to grammars/en-GB/voiceWords.txt.
 */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { parseSync } from "oxc-parser"
import { expect, test } from "vitest"
import { parse } from "yaml"
import { readVoiceWords } from "../../src/cli/readVoiceWords"
import { sayNumber } from "../../src/facts/sayNumber"
import { planClips } from "../../src/speech/planClips"

const names = new Set(readVoiceWords(readFileSync("grammars/en-GB/voiceWords.txt", "utf8")).map((word) => word.name))
const lacking = (sentences: readonly string[]) => [
  ...new Set(sentences.flatMap((sentence) => planClips(sentence, names).spelled)),
]

type Node = { type: string; [key: string]: unknown }
const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null && "type" in value
const childrenOf = (node: Node): Node[] => Object.values(node).flat().filter(isNode)

/** The literal text of one node, without looking inside it. */
const textOf = (node: Node): string[] => {
  if (node.type === "Literal" && typeof node.value === "string") return [node.value]
  if (node.type === "TemplateElement") return [(node.value as { cooked: string }).cooked]
  return []
}
const allTexts = (node: Node): string[] => [...textOf(node), ...childrenOf(node).flatMap(allTexts)]

const spokenNames = ["spoken", "refuse"]
/** Texts under a property or a variable that is called spoken, and those of refusals. */
const spokenTexts = (node: Node): string[] => {
  const name = [node.key, node.id, node.callee].find(isNode)
  const isSpoken = name !== undefined && spokenNames.includes(String(name.name))
  return isSpoken ? allTexts(node) : childrenOf(node).flatMap(spokenTexts)
}

const programsIn = (folder: string, choose: RegExp) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => choose.test(name))
    .map((name) => parseSync(name, readFileSync(join(folder, name), "utf8")).program as unknown as Node)

/** Names and keys are one word in small letters or camel case; what is said has blanks or opens with a capital. */
const isSaid = (text: string) => /\w /.test(text) || / \w/.test(text) || /^[A-Z][a-z]+[.?!:]?\s*$/.test(text)
const isTechnical = (text: string) => /[{}_]|mm²|^\.\.?\/|^TN-|^.-?$/.test(text)

test("every sentence of the dialogue", () => {
  const said = programsIn("src/dialogue", /\.ts$/).flatMap(allTexts).filter(isSaid)
  expect(said.length).toBeGreaterThan(20)
  expect(lacking(said.filter((text) => !isTechnical(text)))).toEqual([])
})

/** Every text under a key `said`, however deep. */
const saidIn = (value: unknown, isSaidKey = false): string[] => {
  if (typeof value === "string") return isSaidKey ? [value] : []
  if (Array.isArray(value)) return value.flatMap((one) => saidIn(one, isSaidKey))
  if (typeof value !== "object" || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => saidIn(inner, isSaidKey || key === "said"))
}

test("everything that is said in the recorded dialogues", () => {
  const files = readdirSync("tests/dialogues").filter((name) => name.endsWith(".yaml"))
  const said = files.flatMap((name) => saidIn(parse(readFileSync(join("tests/dialogues", name), "utf8"))))
  expect(said.length).toBeGreaterThan(20)
  expect(lacking(said)).toEqual([])
})

test("every spoken sentence of the rules", () => {
  const said = [
    ...programsIn("src/rules", /^sayings\.ts$/).flatMap(allTexts),
    ...programsIn("src/rules", /\.ts$/).flatMap(spokenTexts),
  ]
  expect(said.length).toBeGreaterThan(10)
  expect(lacking(said.filter((text) => !isTechnical(text)))).toEqual([])
})

test("every name of an item, a field, a step, a month, and every turn of a read-back", () => {
  const said = programsIn("src/interpret", /^(say\w+|readBack)\.ts$/)
    .flatMap(allTexts)
    .filter((text) => !isTechnical(text))
  expect(said).toContain("leads nulled")
  expect(lacking(said)).toEqual([])
})

test("every reason that a warning can be kept for, as it is repeated", () => {
  const rule = /<reason> = ([^;]*);/.exec(readFileSync("grammars/en-GB/ear.jsgf", "utf8"))?.[1] ?? ""
  const reasons = rule.split(/[|()[\]]/)
  expect(reasons.length).toBeGreaterThan(3)
  expect(lacking(reasons)).toEqual([])
})

test("every number, in words and in figures", () => {
  const values = [0, 0.05, 0.1, 1.15, 14.5, 99.9, 104, 600, 1667, 22_000, 999_999, 2_000_000]
  expect(lacking(values.map((value) => sayNumber(value)))).toEqual([])
  expect(lacking(values.map(String))).toEqual([])
  expect(lacking(["3 April 2030", "14:05", "16 mm²", "0.05 Ω", "100 %"])).toEqual([])
})

test("every letter, so that any unknown word can be spelled", () => {
  for (const letter of "abcdefghijklmnopqrstuvwxyz") expect(names).toContain(`letter:${letter}`)
})
