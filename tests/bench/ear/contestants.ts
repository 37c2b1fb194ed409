/**
 * The ears that are compared on the same grammars and sounds: (a) Debian's pocketsphinx, (b) the engine as it is shipped,
 * with its own model and settings, and (c) ours. Each sound is cut around its words, so that all hear the same.
 */
import { mkdtempSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { setImmediate } from "node:timers/promises"
import { makeEarPack } from "../../../src/cli/earPack"
import { openEar, readEarFiles } from "../../../src/cli/openEar"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import { jsgfWords } from "../../../src/speech/jsgfWords"
import { createBareEar } from "./bareEar"
import { grammarUnder, judge, type Verdict } from "./limits"
import { hasPocketsphinx, hearWithPocketsphinx } from "./pocketsphinx"
import type { LoopEar } from "./soundLoop"
import { takeGrammar } from "./takeGrammar"

export interface Trial {
  /** What was said. */
  text: string
  voice: string
  grammar: EarGrammar
  /** At 16 kHz, with a little of the surroundings before and after the words. */
  samples: Float32Array
}

export interface Answer {
  text: string
  margin: number
}

/** Answers in the order of the trials, null where nothing was heard. */
export type Contestant = (trials: readonly Trial[]) => Promise<(Answer | null)[]>

/** Pocketsphinx is left out where it is not installed. Throws where the ear pack is missing. */
export const makeContestants = async (): Promise<[name: string, hear: Contestant][]> => {
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
    let last = ""
    for (const { voice, grammar, samples } of trials) {
      await setImmediate()
      if (voice !== last) ear.startAnew?.()
      last = voice
      takeGrammar(ear, grammar)
      answers.push(ear.hear(samples))
    }
    return answers
  }

/** One run of the program for each grammar, as it takes one. */
const inBatches =
  (files: ReturnType<typeof readEarFiles>): Contestant =>
  async (trials) => {
    const answers = new Map<Trial, Answer>()
    for (const grammar of new Set(trials.map((trial) => trial.grammar))) {
      const same = trials.filter((trial) => trial.grammar === grammar)
      const sounds = same.map((trial) => trial.samples)
      const texts = hearWithPocketsphinx(grammar, files, sounds)
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

/** What one ear made of all trials, in a line. */
export const describeAnswers = (
  what: string,
  ear: string,
  { trials, answers }: { trials: readonly Trial[]; answers: readonly (Answer | null)[] },
): string => {
  const counts: Record<Verdict, number> = { right: 0, wrongPlain: 0, rightAsked: 0, wrongAsked: 0, silent: 0 }
  for (const [n, { text }] of trials.entries()) {
    const answer = answers[n]
    counts[judge(text, answer ? [answer] : [])] += 1
  }
  const exact = counts.right + counts.rightAsked
  return (
    `${what.padEnd(20)} ${ear.padEnd(13)} ${exact} of ${trials.length} exact (${counts.rightAsked} of them asked), ` +
    `${counts.wrongPlain} wrong accepted, ${counts.wrongAsked} wrong asked, ${counts.silent} silent`
  )
}
