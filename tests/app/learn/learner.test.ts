/** Reading the prompts: each is ticked, asked for again or skipped, and what is learnt is kept only at the end. */
import { expect, test } from "vitest"
import { prompts } from "../../../src/app/learn/prompts"
import { SettingsKeeper } from "../../../src/app/settings/SettingsKeeper"
import { refuse } from "../../../src/facts/Outcome"
import { accepts, readFlatGrammar } from "../../../src/speech/flatGrammar"
import { numberWords } from "../../../src/speech/numberWords"
import { mostEase } from "../../../src/speech/VoiceFit"
import { earGrammar } from "../../audio/wholeGrammar"
import { createReader } from "./createReader"

const begin = async () => {
  const settings = new SettingsKeeper(null)
  const reader = createReader(settings)
  await reader.learner.start()
  return { settings, reader, view: reader.learner.snapshot }
}

test("there are twenty prompts, each a sentence of the product, with every word for a number among them", () => {
  const automaton = readFlatGrammar(earGrammar({ asked: "confirm" }).jsgf)!
  expect(prompts).toHaveLength(20)
  expect(prompts.filter((prompt) => !accepts(automaton, prompt.split(" ")))).toEqual([])
  const said = new Set(prompts.flatMap((prompt) => prompt.split(" ")))
  const wanted = [...numberWords, "point", "square", "metres", "millimetres", "mil", "ohms", "yes", "no"]
  expect(wanted.filter((word) => !said.has(word))).toEqual([])
})

test("a voice that fits worse than most is eased, and the ear is told at once", async () => {
  const { settings, reader, view } = await begin()
  expect(reader.voices).toEqual(["learning"])
  for (const prompt of prompts) {
    expect(view()).toMatchObject({ at: "asking" })
    reader.read(prompt, 3)
    expect(view()).toMatchObject({ at: "heard" })
    reader.wait()
  }
  expect(view()).toMatchObject({ at: "learnt", voice: { v: 1, ease: mostEase, prompts: 20 } })
  expect(settings.snapshot().voiceFit).toEqual({ v: 1, ease: mostEase, prompts: 20 })
  expect(reader.voices.at(-1)).toEqual(settings.snapshot().voiceFit)
  expect(reader.grammars).toEqual(prompts.map((prompt) => `prompt ${prompt}`))
  expect(reader.isListening).toBe(false)
})

test("a voice that fits as well as most needs nothing, and that is kept as well", async () => {
  const { settings, reader } = await begin()
  for (const prompt of prompts) {
    reader.read(prompt)
    reader.wait()
  }
  expect(settings.snapshot().voiceFit).toEqual({ v: 1, ease: 0, prompts: 20 })
})

test("what is no prompt is asked for again, and words of the last prompt count for no other", async () => {
  const { reader, view } = await begin()
  reader.mumble()
  reader.wait()
  expect(view()).toMatchObject({ at: "again", index: 0 })
  reader.read(prompts[0])
  reader.read(prompts[0])
  reader.wait()
  expect(view()).toMatchObject({ at: "asking", index: 1, marks: ["heard"] })
  reader.read(prompts[0])
  expect(view()).toMatchObject({ index: 1, marks: ["heard"] })
  reader.learner.skip()
  expect(view()).toMatchObject({ at: "asking", index: 2, marks: ["heard", "skipped"] })
})

test("too few prompts teach nothing, and what was learnt before stays", async () => {
  const before = { v: 1, ease: 0.3, prompts: 20 } as const
  const { settings, reader, view } = await begin()
  settings.change({ voiceFit: before })
  for (const prompt of prompts.slice(0, 11)) {
    reader.read(prompt, 3)
    reader.wait()
  }
  for (const _ of prompts.slice(11)) reader.learner.skip()
  expect(view()).toMatchObject({ at: "failed", because: "Only 11 sentences were heard, and it takes 12." })
  expect(settings.snapshot().voiceFit).toEqual(before)
  expect(reader.voices.at(-1)).toEqual(before)
})

test("stopped on the way, nothing is learnt and the ear hears as before", async () => {
  const { settings, reader } = await begin()
  reader.read(prompts[0], 3)
  reader.learner.end()
  reader.wait()
  expect(settings.snapshot().voiceFit).toBeNull()
  expect(reader.voices).toEqual(["learning", null])
  expect(reader.isListening).toBe(false)
})

test("a microphone that is refused is said in words, and the ear hears as before", async () => {
  const reader = createReader(new SettingsKeeper(null), { starts: refuse("The microphone is not allowed.") })
  await reader.learner.start()
  expect(reader.learner.snapshot()).toMatchObject({ at: "failed", because: "The microphone is not allowed." })
  expect(reader.voices).toEqual(["learning", null])
})
