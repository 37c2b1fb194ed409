/**
 * `npm run bench -- ear memory [hours]`: the ear over a long day, as fast as it goes. Each minute holds a sentence of the
 * product, site talk, a burst of noise and quiet; printed are the engine's memory and that of the whole process.
 */
import { setImmediate } from "node:timers/promises"
import { fliteVoices } from "../../../src/cli/flite"
import { loadEngineInNode, readEarFiles } from "../../../src/cli/openEar"
import { createEarStream } from "../../../src/speech/earStream"
import { createRecogniser } from "../../../src/speech/recogniser"
import { createNoiseBed } from "../../audio/noiseBed"
import { grammarUnder } from "./limits"
import { foreignPhrases, ourPhrases, type Phrase } from "./phrases"
import { readNoise, speak } from "./speakInNoise"
import { takeGrammar } from "./takeGrammar"

const rateHz = 16_000
const packet = 1600

/** Prints a line each half hour of sound. Throws where the pack is missing. */
export const runMemory = async ([hours = "10"]: readonly string[]): Promise<void> => {
  const engine = await loadEngineInNode()
  const ear = createRecogniser(engine, readEarFiles())
  const stream = createEarStream(ear, () => "bench")
  const bed = await createNoiseBed("pink", 1)
  const [still, loud] = [readNoise("pink40").level, readNoise("pink10").level]
  let heard = 0
  const feed = (seconds: number, level: number, words: Float32Array = new Float32Array(0)) => {
    const samples = bed.take(Math.max(Math.round(seconds * rateHz), words.length)).map((sample) => sample * level)
    for (let n = 0; n < words.length; n++) samples[n]! += words[n]!
    for (let at = 0; at < samples.length; at += packet)
      heard += stream.push(samples.slice(at, at + packet), rateHz).length
  }
  const minute = async (n: number) => {
    for (const phrases of [ourPhrases, foreignPhrases]) {
      const phrase: Phrase = phrases[n % phrases.length]!
      takeGrammar(ear, grammarUnder(phrase.asked))
      feed(0, still, await speak(phrase.text, fliteVoices[n % fliteVoices.length]!))
      feed(12, still)
    }
    feed(2, loud)
    feed(60 - 2 * 14 - 2, still)
  }
  const show = (minutes: number) => {
    const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`
    const { rss, heapUsed } = process.memoryUsage()
    console.log(
      `${(minutes / 60).toFixed(1)} h  engine ${megabytes(engine.HEAPU8.length)}, process ${megabytes(rss)}, ` +
        `of it script ${megabytes(heapUsed)}; ${heard} utterances heard`,
    )
  }
  for (let n = 0; n < Number(hours) * 60; n++) {
    if (n % 30 === 0) show(n)
    await minute(n)
    await setImmediate()
  }
  show(Number(hours) * 60)
}
