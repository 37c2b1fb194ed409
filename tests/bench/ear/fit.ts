/**
 * `npm run bench -- ear fit [noise …]`: what learning a voice does. Each voice reads the prompts; then phrases that are no
 * prompts, and site talk by all the other voices, are judged as for anybody and as for that voice. The same sounds are
 * judged twice, so any difference is the learning's. Beside the synthesiser's voices stand two that fit the model badly:
 * they are played faster or slower, which moves their formants. `SHARE=0.2` takes every fifth phrase and twice as much
 * talk, `VOICES=awb,awb-slow` those voices.
 */
import { setImmediate } from "node:timers/promises"
import { grammarOfPrompt } from "../../../src/app/learn/grammarOfPrompt"
import { prompts } from "../../../src/app/learn/prompts"
import { type FliteVoice, fliteVoices } from "../../../src/cli/flite"
import { openEar } from "../../../src/cli/openEar"
import { learnVoice, middleLevel } from "../../../src/speech/learnVoice"
import { hearingOf, type Recogniser, type Weighed } from "../../../src/speech/recogniser"
import { resample } from "../../../src/speech/resample"
import type { VoiceFit } from "../../../src/speech/VoiceFit"
import { grammarUnder, judge, type Verdict } from "./limits"
import { foreignPhrases, ourPhrases, type Phrase } from "./phrases"
import { type Noise, readNoise, speakInNoise } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

interface Reader {
  name: string
  voice: FliteVoice
  /** How much faster it is played, and higher. */
  speed: number
}

const readers: readonly Reader[] = [
  ...fliteVoices.map((voice) => ({ name: voice, voice, speed: 1 })),
  { name: "awb-slow", voice: "awb", speed: 0.85 },
  { name: "slt-fast", voice: "slt", speed: 1.15 },
]

const rateHz = 16_000
/** Seconds of noise that are kept before and after the words. */
const [before, after] = [0.35, 0.3]

interface Trial {
  phrase: Phrase
  weighed: Weighed | null
}

/** Throws where the pack is missing. */
export const runFit = async (noises: readonly string[]): Promise<void> => {
  const opened = await openEar()
  if (!opened.ok) throw new Error(opened.because)
  for (const noise of noises.length > 0 ? noises : ["quiet"]) await runIn(opened.value, noise)
}

const runIn = async (ear: Recogniser, noise: string): Promise<void> => {
  const all: { name: string; voice: VoiceFit; talk: Trial[] }[] = []
  for (const reader of readersAsked()) {
    const hear = (phrase: Phrase, seed: number) => weigh(ear, reader, phrase.text, readNoise(noise), seed)
    const fits = []
    for (const [seed, prompt] of prompts.entries()) {
      takeGrammar(ear, grammarOfPrompt(prompt, grammarUnder()))
      const weighed = await hear({ text: prompt, isOurs: true }, seed)
      if (weighed) fits.push(weighed.fit)
    }
    const learnt = learnVoice(fits)
    if (!learnt.ok) {
      console.log(`${noise}, ${reader.name}: ${learnt.because}`)
      continue
    }
    console.log(`${noise}, ${reader.name}: middle ${middleLevel(fits).toFixed(2)}, eased by ${learnt.value.ease}`)
    const trials = async (phrases: readonly Phrase[]) => {
      const found: Trial[] = []
      for (const [seed, phrase] of phrases.entries()) {
        takeGrammar(ear, grammarUnder(phrase.asked))
        found.push({ phrase, weighed: await hear(phrase, seed) })
      }
      return found
    }
    all.push({ name: reader.name, voice: learnt.value, talk: await trials(talk) })
    // Eased by nothing, it is heard as before.
    if (learnt.value.ease > 0) tell(`${noise}, ${reader.name}, own phrases`, await trials(heldOut), learnt.value)
  }
  for (const { name, voice } of all.filter((one) => one.voice.ease > 0)) {
    const others = all.filter((one) => one.name !== name).flatMap((one) => one.talk)
    tell(`${noise}, ${name}, others' talk`, others, voice)
  }
}

const tell = (what: string, trials: readonly Trial[], voice: VoiceFit) => {
  console.log(`${what}, before: ${count(trials, null)}`)
  console.log(`${what}, after:  ${count(trials, voice)}`)
}

const weigh = async (ear: Recogniser, { voice, speed }: Reader, text: string, noise: Noise, seed: number) => {
  const { samples, from, to } = await speakInNoise(text, voice, noise, seed)
  await setImmediate()
  const cut = samples.slice(Math.max(0, from - before * rateHz), to + after * rateHz)
  return ear.weigh(resample(cut, rateHz * speed, rateHz))
}

const share = Number(process.env.SHARE ?? 1)
const every = (part: number) => (_: unknown, index: number) => Math.floor((index + 1) * part) > Math.floor(index * part)
const isPrompt = (text: string) => (prompts as readonly string[]).includes(text)
const heldOut = ourPhrases.filter(({ text }) => !isPrompt(text)).filter(every(share))
const talk = foreignPhrases.filter(every(Math.min(1, 2 * share)))

const readersAsked = () => {
  const names = process.env.VOICES?.split(",")
  return readers.filter(({ name }) => names === undefined || names.includes(name))
}

const names: Record<Verdict, string> = {
  right: "right plain",
  rightAsked: "right asked",
  wrongPlain: "wrong plain",
  wrongAsked: "wrong asked",
  silent: "silent",
}

const count = (trials: readonly Trial[], voice: VoiceFit | null): string => {
  const counts = new Map<Verdict, number>()
  for (const { phrase, weighed } of trials) {
    const hearing = weighed && hearingOf(weighed, voice)
    const verdict = judge(phrase.text, hearing ? [hearing] : [])
    counts.set(verdict, (counts.get(verdict) ?? 0) + 1)
  }
  const told = (Object.keys(names) as Verdict[]).map((verdict) => `${counts.get(verdict) ?? 0} ${names[verdict]}`)
  return told.join(", ")
}
