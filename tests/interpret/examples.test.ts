/** Every example in a grammar is won by its own rule, with all grammars loaded. */
import { expect, test } from "vitest"
import { findClashes, sampleSentences, trySentence } from "../../src/cli/grammarTools"
import { readGrammarFolder } from "../../src/interpret/GrammarFolder"
import { files, interpreter } from "./interpreter"

const folder = readGrammarFolder(files)

test("examples are won by their own rules", () => {
  const asked = new Set(["commands.reason"])
  expect(findClashes(files).filter((clash) => !asked.has(clash.rule))).toEqual([])
  expect([...folder.set.values()].flatMap((rule) => rule.examples).length).toBeGreaterThan(60)
})

test("every public rule says what it is for", () => {
  const mute = [...folder.set.values()].filter((rule) => rule.isPublic && rule.about === "")
  expect(mute.map((rule) => rule.fullName)).toEqual([])
})

test("a sentence can be tried, with the phrases and what came of them", () => {
  const lines = trySentence(interpreter, "water, sixteen square")
  expect(lines).toContain('fact     {"kind":"conductor_csa","value":16,"unit":"mm2","subject":"water"}')
  expect(lines.some((line) => line.startsWith("phrase   size.size"))).toBe(true)
})

test("a rule can be sampled, and an unknown one is refused in words", () => {
  const sampled = sampleSentences(files, "numbers.lowOhms", 3)
  expect(sampled.ok && sampled.value.every((text) => text.includes("point"))).toBe(true)
  expect(sampleSentences(files, "numbers.none", 1)).toMatchObject({ ok: false })
})
