/**
 * Words out of one utterance, with a margin that says how far to believe them. Two decoders live as long as the module:
 * one holds the grammar, the other decodes the same sound again with rivals.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { HeardWord } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type Decoded, decode, setAutomaton, setGrammar } from "./decode"
import type { EarFiles } from "./EarPack"
import type { Engine } from "./engine"
import { type Automaton, accepts, readFlatGrammar } from "./flatGrammar"
import { jsgfWords } from "./jsgfWords"
import { loadDecoder, type RawDecoder } from "./loadDecoder"
import { marginOf } from "./margins"
import { measureFit } from "./measureFit"
import { createNoiseAdapter } from "./noiseAdapter"
import { grammarOf, numberRivals } from "./numberRivals"
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
  for (const word of phoneWords) addWord(rival, word)
  const fitToNoise = createNoiseAdapter(engine, files, [main, rival])
  let taken: string | null = null
  let sentences: Automaton | null = null
  /** There are about ten questions, each with its grammar, and the product goes back and forth between them. */
  const automata = new Map<string, Automaton>()

  const take = (grammar: EarGrammar): Outcome => {
    if (taken === grammar.id) return done(undefined)
    taken = null
    for (const decoder of [main, rival]) for (const entry of grammar.pronunciations) addWord(decoder, entry)
    const missing = jsgfWords(grammar.jsgf).filter((word) => main.lookup_word(word) === null)
    if (missing.length > 0) return refuse(`I cannot listen: I do not know how to say ${missing.join(", ")}.`)
    sentences = automata.get(grammar.id) ?? readFlatGrammar(grammar.jsgf)
    if (!sentences) return refuse("I cannot listen: The grammar cannot be read.")
    const outcome = setAutomaton(engine, main, sentences)
    if (!outcome.ok) return refuse(`I cannot listen: ${outcome.because}`)
    automata.set(grammar.id, sentences)
    taken = grammar.id
    return outcome
  }

  const against = (jsgf: string, samples: Float32Array): Decoded | null =>
    setGrammar(engine, rival, jsgf).ok ? decode(engine, rival, samples) : null

  /** The likeliest other number, and by how many nats the answer leads it. */
  const nearestNumber = (best: Decoded, samples: Float32Array) => {
    const words = best.words.map((word) => word.text)
    const others = numberRivals(words, (other) => sentences !== null && accepts(sentences, other))
    const nearest = others.length > 0 ? against(grammarOf(others), samples) : null
    return nearest && { text: nearest.text, lead: best.nats - nearest.nats }
  }

  const hear = (samples: Float32Array): Hearing | null => {
    if (taken === null || samples.length < shortest * files.pack.rateHz) return null
    fitToNoise(samples)
    const best = decode(engine, main, samples)
    const free = best && against(phoneLoop, samples)
    if (!best || best.words.length === 0 || !free) return null
    const fit = measureFit(best, free)
    if (marginOf(fit, null) === null) return null
    const nearest = nearestNumber(best, samples)
    const margin = marginOf(fit, nearest?.lead ?? null)
    if (margin === null) return null
    return { text: best.text, alternatives: nearest && margin < 1 ? [nearest.text] : [], words: best.words, margin }
  }

  return { rateHz: files.pack.rateHz, take, hear }
}

/** Adds a way of saying a word unless it is there: adding one twice throws. Several ways of saying one word are numbered. */
const addWord = (decoder: RawDecoder, [word, sound]: readonly [string, string]) => {
  for (let way = 1; ; way++) {
    const name = way === 1 ? word : `${word}(${way})`
    const known = decoder.lookup_word(name)
    if (known === sound) return
    if (known !== null) continue
    try {
      decoder.add_words([name, sound])
    } catch {
      // A phone that the model lacks. The word stays unknown, and a grammar that needs it is refused by name.
    }
    return
  }
}
