/**
 * `npm run bench -- ear limits [noise …]`: what the limits of `margins.ts` do. They are fitted on every second phrase, and
 * what counts is what they do on the others. `OUT` names a file for what each answer was judged by, a JSON line each.
 */
import { appendFileSync } from "node:fs"
import { setImmediate } from "node:timers/promises"
import { openEar } from "../../../src/cli/openEar"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import { createEarStream } from "../../../src/speech/earStream"
import { shippedLimits } from "../../../src/speech/margins"
import { type Hearing, hearingOf, type Recogniser, type Weighed } from "../../../src/speech/recogniser"
import { earGrammar } from "../../audio/wholeGrammar"
import { fitLimits, type Judged, tallyUnder } from "./fitLimits"
import { foreignPhrases, isForFitting, ourPhrases, type Phrase } from "./phrases"
import { readNoise, speakInNoise, voicesAsked } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

const usual = ["quiet", "white20", "white10", "babble15"]

const grammars = new Map<string, EarGrammar>()
/** The same question gives the same grammar, which takes a while to make. */
export const grammarUnder = (asked = ""): EarGrammar => {
  const known = grammars.get(asked) ?? earGrammar(asked === "" ? {} : { asked })
  grammars.set(asked, known)
  return known
}

/** How an utterance ended. `plain` is taken without a yes, `asked` put forward or asked about. */
export type Verdict = "right" | "wrongPlain" | "rightAsked" | "wrongAsked" | "silent"

/** One phrase through the stream, with all that its last answer was judged by. */
export const hearWeighed = (ear: Recogniser, samples: Float32Array, rateHz: number) => {
  const seen: Weighed[] = []
  const hear = (sound: Float32Array, before?: Float32Array): Hearing | null => {
    const weighed = ear.weigh(sound, before)
    if (!weighed) return null
    seen.push(weighed)
    return hearingOf(weighed)
  }
  const stream = createEarStream({ rateHz: ear.rateHz, hear }, () => "bench")
  const heards = [...stream.push(samples, rateHz), ...stream.finish()].map((one) => one.heard)
  return { heards, weighed: seen.at(-1) ?? null }
}

export const judge = (text: string, heards: ReadonlyArray<{ text: string; margin: number | null }>): Verdict => {
  if (heards.length === 0) return "silent"
  const isRight = heards.map((one) => one.text).join(" ") === text
  const isPlain = heards.every((one) => (one.margin ?? 0) >= 1)
  if (isPlain) return isRight ? "right" : "wrongPlain"
  return isRight ? "rightAsked" : "wrongAsked"
}

interface Trial {
  name: string
  index: number
  half: string
  voice: string
  phrase: Phrase
  weighed: Weighed | null
  heards: ReadonlyArray<{ text: string; margin: number | null }>
}

/** Every phrase that is asked for, voice by voice, in this noise. */
async function* trialsIn(ear: Recogniser, name: string): AsyncGenerator<Trial> {
  const [share, asked] = [Number(process.env.SHARE ?? 1), process.env.ASKED]
  for (const voice of voicesAsked()) {
    ear.startAnew()
    for (const [index, phrase] of [...ourPhrases, ...foreignPhrases].entries()) {
      if (index % 16 >= share * 16 || (asked !== undefined && phrase.asked !== asked)) continue
      const { samples, rateHz } = await speakInNoise(phrase.text, voice, readNoise(name), index)
      await setImmediate()
      takeGrammar(ear, grammarUnder(phrase.asked))
      const half = `${phrase.isOurs ? "" : "talk, "}${isForFitting(index) ? "fitted" : "others"}`
      yield { name, index, half, voice, phrase, ...hearWeighed(ear, samples, rateHz) }
    }
  }
}

/** Prints one line a noise, for each half of the phrases and for what is no sentence of the product. */
export const runLimits = async (noises: readonly string[]): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  const all: Judged[] = []
  for (const name of noises.length > 0 ? noises : usual) {
    const counts = new Map<string, Map<Verdict, number>>()
    const judged: Judged[] = []
    for await (const trial of trialsIn(opened.value, name)) {
      const verdict = judge(trial.phrase.text, trial.heards)
      judged.push(toJudged(trial))
      const tally = counts.get(trial.half) ?? new Map<Verdict, number>()
      counts.set(trial.half, tally.set(verdict, (tally.get(verdict) ?? 0) + 1))
      if (process.env.OUT) appendFileSync(process.env.OUT, describe(trial))
      if (verdict === "wrongPlain")
        console.log(`  ${name} ${trial.half} ${trial.voice}: ${trial.phrase.text} → ${show(trial.heards)}`)
    }
    for (const [half, tally] of counts) {
      const parts = [...tally].sort().map(([verdict, count]) => `${count} ${verdict}`)
      console.log(`${name.padEnd(9)} ${half.padEnd(14)} ${parts.join(", ")}`)
    }
    all.push(...judged)
    printFit(name, judged)
  }
  printFit("all", all)
}

/** The limits that one half asks for, and what they and the shipped ones do on the other. */
const printFit = (name: string, judged: readonly Judged[]): void => {
  const fitted = fitLimits(judged.filter((one) => one.isForFitting))
  const others = judged.filter((one) => !one.isForFitting)
  console.log(`${name.padEnd(9)} fitted on the one half: ${JSON.stringify(fitted)}`)
  for (const [which, limits] of [["shipped", shippedLimits] as const, ["fitted", fitted] as const]) {
    const { rightPlain, wrongPlain, foreignPlain, rightAsked, wrongAsked, silent } = tallyUnder(limits, others)
    console.log(
      `${name.padEnd(9)} on the other, ${which}: ${rightPlain} right, ${rightAsked} right but asked, ${wrongPlain} wrong ` +
        `taken, ${foreignPlain} talk taken, ${wrongAsked} wrong or talk asked about, ${silent} silent`,
    )
  }
}

const toJudged = ({ phrase, index, weighed, heards }: Trial): Judged => ({
  isForFitting: isForFitting(index),
  isOurs: phrase.isOurs,
  isRight: weighed?.best.text === phrase.text && heards.length <= 1,
  fit: weighed?.fit ?? null,
  lead: weighed?.lead ?? null,
})

const show = (heards: ReadonlyArray<{ text: string; margin: number | null }>) =>
  heards.map((one) => `${one.text} (${one.margin})`).join(", ")

const describe = ({ weighed, heards, ...rest }: Trial) => {
  const { best, fit, nearest, lead } = weighed ?? {}
  const heard = heards.map((one) => one.text).join(" ")
  return `${JSON.stringify({ ...rest, text: best?.text, fit, lead, nearest: nearest?.text, heard, count: heards.length })}\n`
}
