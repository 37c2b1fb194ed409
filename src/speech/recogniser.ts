/**
 * Words out of one utterance, with a margin that says how far to believe them. Two decoders live as long as the module:
 * one holds the grammar, the other decodes the same sound again with rivals.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { HeardWord } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type Decoded, decode, setGrammar } from "./decode"
import type { EarFiles } from "./EarPack"
import type { Engine } from "./engine"
import { jsgfWords } from "./jsgfWords"
import { loadDecoder, type RawDecoder } from "./loadDecoder"
import { marginOf } from "./margins"
import { createNoiseAdapter } from "./noiseAdapter"
import { rivalGrammar } from "./numberRivals"
import { phoneLoop, phoneWords } from "./phoneLoop"

/** Sound shorter than this holds no word, in seconds. */
const shortest = 0.15

/** One answer. Times are seconds from the start of the utterance. */
export interface Hearing {
  text: string
  alternatives: string[]
  words: HeardWord[]
  margin: number
}

export interface Recogniser {
  rateHz: number
  /** Refuses over a word that has no pronunciation; then nothing is heard until a grammar is taken. */
  take(grammar: EarGrammar): Outcome
  /** Null where nothing of the grammar was said, and while there is no grammar. */
  hear(samples: Float32Array): Hearing | null
}

/** Throws where the pack is not a model: see `loadDecoder`. */
export const createRecogniser = (engine: Engine, files: EarFiles): Recogniser => {
  // Scores of two decodings can only be compared when each frame is scored by all of the model. The engine's own noise
  // removal is off: the model is fitted to the noise instead.
  const settings = { compallsen: true, remove_noise: false }
  const main = loadDecoder(engine, files, settings)
  const rival = loadDecoder(engine, files, settings)
  phoneWords.forEach((word, index) => {
    addWord(rival, word, index === phoneWords.length - 1)
  })
  const fitToNoise = createNoiseAdapter(engine, files, [main, rival])
  let taken: string | null = null

  const take = (grammar: EarGrammar): Outcome => {
    if (taken === grammar.id) return done(undefined)
    taken = null
    for (const decoder of [main, rival]) for (const entry of grammar.pronunciations) addWord(decoder, entry, false)
    const missing = jsgfWords(grammar.jsgf).filter((word) => main.lookup_word(word) === null)
    if (missing.length > 0) return refuse(`I cannot listen: I do not know how to say ${missing.join(", ")}.`)
    const outcome = setGrammar(engine, main, grammar.jsgf)
    if (!outcome.ok) return refuse(`I cannot listen: ${outcome.because}`)
    taken = grammar.id
    return outcome
  }

  const against = (jsgf: string, samples: Float32Array): Decoded | null =>
    setGrammar(engine, rival, jsgf).ok ? decode(engine, rival, samples) : null

  const hear = (samples: Float32Array): Hearing | null => {
    if (taken === null || samples.length < shortest * files.pack.rateHz) return null
    fitToNoise(samples)
    const best = decode(engine, main, samples)
    const free = best && against(phoneLoop, samples)
    if (!best || best.words.length === 0 || !free) return null
    const frames = best.words.reduce((sum, word) => sum + (word.end - word.start) * 100, 0)
    const fit = (best.nats - free.nats) / frames
    const said = best.words.map((word) => word.text)
    const others = rivalGrammar(said, (word) => rival.lookup_word(word) !== null)
    const nearest = others === null ? null : against(others, samples)
    const margin = marginOf(fit, nearest === null ? null : best.nats - nearest.nats)
    if (margin === null) return null
    return { text: best.text, alternatives: nearest ? [nearest.text] : [], words: best.words, margin }
  }

  return { rateHz: files.pack.rateHz, take, hear }
}

/** Adds a word unless it is there: adding one twice throws. Several ways of saying one word are numbered. */
const addWord = (decoder: RawDecoder, [word, sound]: readonly [string, string], last: boolean) => {
  for (let way = 1; ; way++) {
    const name = way === 1 ? word : `${word}(${way})`
    const known = decoder.lookup_word(name)
    if (known === sound) return
    if (known !== null) continue
    engineAdd(decoder, name, sound, last)
    return
  }
}

const engineAdd = (decoder: RawDecoder, name: string, sound: string, last: boolean) => {
  try {
    decoder.add_words([name, sound])
  } catch {
    // A phone the model lacks. The word stays unknown, and a grammar that needs it is refused by name.
    void last
  }
}
