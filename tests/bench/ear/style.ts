/**
 * `npm run bench -- ear style [noise …]`: the same phrases, grammars and sounds through (a) Debian's pocketsphinx, (b) the
 * engine as it is shipped, with its own model and settings, and (c) ours. Each sound is cut around its words, so that all
 * three hear the same. `SHARE=0.25` takes every fourth phrase, `VOICES=slt,rms` those voices.
 */
import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { setImmediate } from "node:timers/promises"
import { makeEarPack } from "../../../src/cli/earPack"
import { openEar, readEarFiles } from "../../../src/cli/openEar"
import { jsgfWords } from "../../../src/speech/jsgfWords"
import { createBareEar } from "./bareEar"
import { grammarUnder, judge, type Verdict } from "./limits"
import { foreignPhrases, ourPhrases, type Phrase } from "./phrases"
import { hasPocketsphinx, hearWithPocketsphinx } from "./pocketsphinx"
import type { LoopEar } from "./soundLoop"
import { readNoise, speakInNoise, voicesAsked } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

const kinds = ["white", "pink", "babble", "buzz"]
const usual = ["quiet", ...[20, 10, 5].flatMap((db) => kinds.map((kind) => `${kind}${db}`))]
/** Seconds of noise that are kept before and after the words. */
const [before, after] = [0.35, 0.3]

interface Trial {
  phrase: Phrase
  samples: Float32Array
}

interface Answer {
  text: string
  margin: number
}

/** Answers in the order of the trials, null where nothing was heard. */
type Contestant = (trials: readonly Trial[]) => Promise<(Answer | null)[]>

/** Prints one line a noise and ear, for the product's phrases and for what is none. Throws where the pack is missing. */
export const runStyle = async (noises: readonly string[]): Promise<void> => {
  const contestants = await makeContestants()
  for (const noise of noises.length > 0 ? noises : usual)
    for (const [what, phrases] of [["product", ourPhrases] as const, ["site talk", foreignPhrases] as const]) {
      const trials = await trialsOf(phrases, noise)
      for (const [name, hear] of contestants) console.log(line(`${noise}, ${what}`, name, trials, await hear(trials)))
    }
}

const trialsOf = async (phrases: readonly Phrase[], noise: string): Promise<Trial[]> => {
  const share = Number(process.env.SHARE ?? 1)
  const trials: Trial[] = []
  for (const [index, phrase] of phrases.entries()) {
    if (index % 16 >= share * 16) continue
    for (const voice of voicesAsked()) {
      const { samples, rateHz, from, to } = await speakInNoise(phrase.text, voice, readNoise(noise), index)
      trials.push({ phrase, samples: samples.slice(from - before * rateHz, to + after * rateHz) })
    }
  }
  return trials
}

const makeContestants = async (): Promise<[name: string, hear: Contestant][]> => {
  const files = readEarFiles()
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const shipped = await createBareEar({ files: await shippedModel(), fitted: false })
  return [
    ...(hasPocketsphinx() ? [["pocketsphinx", inBatches(files)] as [string, Contestant]] : []),
    ["as shipped", oneByOne(shipped)],
    ["ours", oneByOne(opened.value)],
  ]
}

const oneByOne =
  (ear: LoopEar): Contestant =>
  async (trials) => {
    const answers: (Answer | null)[] = []
    for (const { phrase, samples } of trials) {
      await setImmediate()
      takeGrammar(ear, grammarUnder(phrase.asked))
      answers.push(ear.hear(samples))
    }
    return answers
  }

/** One run of the program for each question, as it takes one grammar. */
const inBatches =
  (files: ReturnType<typeof readEarFiles>): Contestant =>
  async (trials) => {
    const answers = new Map<Trial, Answer>()
    for (const asked of new Set(trials.map((trial) => trial.phrase.asked))) {
      const same = trials.filter((trial) => trial.phrase.asked === asked)
      const texts = hearWithPocketsphinx(
        grammarUnder(asked),
        files,
        same.map((trial) => trial.samples),
      )
      for (const [n, text] of texts.entries()) if (text !== "") answers.set(same[n]!, { text, margin: 1 })
    }
    return trials.map((trial) => answers.get(trial) ?? null)
  }

/** The model that comes with the engine, with the product's words. */
const shippedModel = async () => {
  const out = mkdtempSync(join(tmpdir(), "shipped-"))
  const words = new Set(["", "confirm", "resistance"].flatMap((asked) => jsgfWords(grammarUnder(asked).jsgf)))
  await makeEarPack({ out, words: [...words], fetchModel: () => Promise.reject(new Error("not wanted")) })
  return readEarFiles(out)
}

const line = (what: string, ear: string, trials: readonly Trial[], answers: readonly (Answer | null)[]): string => {
  const counts: Record<Verdict, number> = { right: 0, wrongPlain: 0, rightAsked: 0, wrongAsked: 0, silent: 0 }
  for (const [n, { phrase }] of trials.entries()) {
    const answer = answers[n]
    counts[judge(phrase.text, answer ? [answer] : [])] += 1
  }
  const exact = counts.right + counts.rightAsked
  return (
    `${what.padEnd(20)} ${ear.padEnd(13)} ${exact} of ${trials.length} exact (${counts.rightAsked} of them asked), ` +
    `${counts.wrongPlain} wrong accepted, ${counts.wrongAsked} wrong asked, ${counts.silent} silent`
  )
}
