/**
 * The offline ear over synthetic speech, with the product's own grammars. Synthetic voices stand in for real ones, which
 * differ more; what they show is that nothing wrong is taken as said. Needs the pack that `npm run ear` makes.
 */
import { setImmediate } from "node:timers/promises"
import { beforeAll, describe, expect, test } from "vitest"
import { fliteVoices } from "../../src/cli/flite"
import { openEar } from "../../src/cli/openEar"
import type { Context } from "../../src/facts/Interpretation"
import { createEarStream } from "../../src/speech/earStream"
import { jsgfWords } from "../../src/speech/jsgfWords"
import type { Recogniser } from "../../src/speech/recogniser"
import { addNoise, productSentences, siteTalk, speakSentence } from "./earSentences"
import { allContexts, earGrammar } from "./wholeGrammar"

let ear: Recogniser
beforeAll(async () => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  ear = opened.value
})

const take = (context: Context = {}) => {
  const taken = ear.take(earGrammar(context))
  if (!taken.ok) throw new Error(taken.because)
}

const hear = async (text: string, voice: (typeof fliteVoices)[number], snrDb: number | null = null) => {
  const { samples, rateHz } = await speakSentence(text, voice)
  // Decoding never waits for anything, and a test process that answers nobody for a minute is taken for dead.
  await setImmediate()
  const stream = createEarStream(ear, () => "any")
  const noisy = snrDb === null ? samples : addNoise(samples, snrDb)
  return [...stream.push(noisy, rateHz), ...stream.finish()].map((one) => one.heard)
}

/** For a hundred decodings on a machine that is busy with other things. */
const patienceMs = 900_000

/** Every sentence once, the voices taking turns. */
const inTurns = (sentences: readonly string[], shift = 0) =>
  sentences.map((text, n) => [text, fliteVoices[(n + shift) % 4]!] as const)

test(
  "sentences of the product are heard, and one that is not heard right is never plain",
  async () => {
    take()
    const wrong: string[] = []
    let plain = 0
    for (const [text, voice] of inTurns(productSentences)) {
      const heards = await hear(text, voice)
      const said = heards.map((one) => one.text).join(" ")
      const isPlain = heards.length > 0 && heards.every((one) => (one.margin ?? 0) >= 1)
      if (isPlain && said !== text) wrong.push(`${voice}: ${text} → ${said}`)
      if (isPlain && said === text) plain += 1
    }
    expect(wrong).toEqual([])
    expect(plain).toBeGreaterThanOrEqual(30)
  },
  patienceMs,
)

test("opening an ear leaves the process to handle its own errors", async () => {
  const before = process.listenerCount("uncaughtException")
  expect((await openEar()).ok).toBe(true)
  expect(process.listenerCount("uncaughtException")).toBe(before)
})

test("of an answer in doubt what was said is put forward, alone or beside the other number", async () => {
  take()
  const heards = await hear("seventeen metres of sixteen square", "slt")
  const [first] = heards
  expect(heards).toHaveLength(1)
  expect([first!.text, ...first!.alternatives]).toContain("seventeen metres of sixteen square")
  if (first!.margin! >= 1) expect(first!.alternatives).toEqual([])
})

test("words carry their times: in order, within the sound, and where they were said", async () => {
  take()
  const [heard] = await hear("water bond sixteen square", "slt")
  expect(heard!.words.map((word) => word.text)).toEqual(["water", "bond", "sixteen", "square"])
  const times = heard!.words.flatMap((word) => [word.start, word.end])
  expect(times).toEqual([...times].sort((a, b) => a - b))
  expect(heard!.start).toBeGreaterThan(0.35)
  expect(heard!.end).toBeLessThan(3)
})

/** A third of the site talk each, so that all of it is tried once. */
const talkUnder: [Context, readonly string[]][] = [
  [{}, siteTalk.slice(26)],
  [{ asked: "confirm" }, siteTalk.slice(13, 26)],
  [{ asked: "conductor_csa" }, siteTalk.slice(0, 13)],
]

describe.each(talkUnder)("with %j asked", (context, sentences) => {
  test(
    "site talk is let pass",
    async () => {
      take(context)
      const taken: string[] = []
      for (const [text, voice] of inTurns(sentences, 1))
        for (const heard of await hear(text, voice)) taken.push(`${voice}: ${text} → ${heard.text} (${heard.margin})`)
      expect(taken).toEqual([])
    },
    patienceMs,
  )
})

test(
  "in noise it asks or stays silent rather than being plainly wrong",
  async () => {
    take()
    const wrong: string[] = []
    for (const [text, voice] of inTurns(productSentences.slice(14, 26)))
      for (const heard of await hear(text, voice, 10))
        if (heard.margin! >= 1 && heard.text !== text) wrong.push(`${voice}: ${text} → ${heard.text}`)
    expect(wrong).toEqual([])
  },
  patienceMs,
)

test.each(allContexts)("the grammar for %j is taken: every word has a pronunciation", (context) => {
  const grammar = earGrammar(context)
  expect(jsgfWords(grammar.jsgf).length).toBeGreaterThan(20)
  expect(ear.take(grammar)).toEqual({ ok: true, value: undefined })
})

describe("a grammar that cannot be used is refused, and the old one is not used instead", () => {
  const good = { id: "good", jsgf: "#JSGF V1.0;\ngrammar g;\npublic <g> = yes | no;\n", pronunciations: [] }
  test.each([
    ["a word without pronunciation", good.jsgf.replace("yes", "xyzzyplugh"), "xyzzyplugh"],
    ["a capital letter", good.jsgf.replace("yes", "Yes"), "Yes"],
    ["no public rule", good.jsgf.replace("public ", ""), "grammar"],
    ["no grammar at all", "yes no", "grammar"],
  ])("%s", async (_, jsgf, named) => {
    expect(ear.take(good)).toMatchObject({ ok: true })
    const refused = ear.take({ ...good, id: "bad", jsgf })
    expect(refused).toMatchObject({ ok: false, because: expect.stringContaining(named) })
    expect(await hear("yes", "slt")).toEqual([])
    expect(ear.take(good)).toMatchObject({ ok: true })
    expect((await hear("yes", "rms")).map((one) => one.text)).toEqual(["yes"])
  })
})
