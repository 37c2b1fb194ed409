/**
 * Words out of one utterance, with a margin that says how far to believe them. Two decoders live as long as the module:
 * one holds the grammar, the other decodes the same sound again with rivals.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { HeardWord } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { readAwaited } from "./awaited"
import { type Decoded, decode, setAutomaton, setGrammar } from "./decode"
import { dither } from "./dither"
import type { EarFiles } from "./EarPack"
import type { Engine } from "./engine"
import { type Automaton, accepts, readFlatGrammar } from "./flatGrammar"
import { headStart, type Moment, soundStart } from "./headStart"
import { jsgfWords } from "./jsgfWords"
import { loadDecoder, type RawDecoder } from "./loadDecoder"
import { marginFor } from "./marginFor"
import { isNearlyFit, tossUpLead } from "./margins"
import { type Fit, measureFit, noiseOf } from "./measureFit"
import { createNoiseAdapter } from "./noiseAdapter"
import { grammarOf } from "./numberWords"
import { phoneLoop, phoneWords } from "./phoneLoop"
import { rivalsOf } from "./rivals"
import { saysAgain } from "./saysAgain"
import type { WhoseVoice } from "./VoiceFit"
import { yesMargin } from "./yesMargin"

/** Sound shorter than this holds no word, in seconds. */
const shortest = 0.15

/**
 * What the engine charges for each word, as a probability. Where it is near one, its own default, short words are put
 * into any long vowel: "four ohms" became "four oh ohms".
 */
const wordCost = 0.05
const enginesOwnWordCost = 0.65

/**
 * What it charges for a silence before, between or after words. Its own, 0.005, makes silence dearer than a word, and a
 * noise that went on after "no" became "no eight".
 */
const silenceCost = 0.3

/**
 * How far behind the best a path may fall before it is given up. With the engine's own, 1e-48 and 7e-29, one sentence in
 * four found no way to its end where others talked (23 of 40 right; with these 33, with 1e-120 as many at twice the work).
 */
const wideBeams = { beam: 1e-80, pbeam: 1e-80, wbeam: 1e-50 }

/**
 * A steady sound whose loudest frames stand above its quietest by no more than so many decibels is noise alone: white
 * noise gives 1, and words at 10 dB of it 2.5 and more.
 */
const leastSnrDb = 2

/** How often a rival may take the place of the answer that it beat. */
const mostSwaps = 2

/** One answer. Times are seconds from the start of the utterance. */
export interface Hearing {
  text: string
  alternatives: string[]
  words: HeardWord[]
  margin: number
  /** How well it fits, whosever voice it is; only from ears that measure it. */
  fit?: Fit
}

export interface Recogniser {
  rateHz: number
  /** Refuses over a word that has no pronunciation; then nothing is heard until a grammar is taken. */
  take(grammar: EarGrammar): Outcome
  /** Whose voice it hears from now on. */
  fitTo(voice: WhoseVoice): void
  /** Null where nothing of the grammar was said, and while there is no grammar. `before`: the surroundings before it. */
  hear(samples: Float32Array, before?: Float32Array): Hearing | null
  /** Another microphone, recording or person: what was learnt of voice and room is forgotten. */
  startAnew(): void
  /** What `hear` judges by, also of answers that it would let pass: limits are fitted on it. */
  weigh(samples: Float32Array, before?: Float32Array): Weighed | null
}

/** What a margin is made of. */
export interface Weighed {
  best: Decoded
  fit: Fit
  /** The likeliest other thing; null where the answer has no rival. */
  nearest: Decoded | null
  /** How far the answer is ahead of it by its sound in nats, null without one. */
  lead: number | null
  /** The same by its sound and by what is likelier to be said. */
  odds: number | null
}

/** Throws where the pack is not a model: see `loadDecoder`. */
export const createRecogniser = (engine: Engine, files: EarFiles): Recogniser => {
  // Scores of two decodings can only be compared when each frame is scored by all of the model. The engine's own noise
  // removal is off: the model is fitted to the noise instead.
  const settings = { compallsen: true, remove_noise: false, wip: wordCost, silprob: silenceCost, ...wideBeams }
  const main = loadDecoder(engine, files, settings)
  const rival = loadDecoder(engine, files, settings)
  for (const word of phoneWords) addWord(rival, word)
  const surroundings = createNoiseAdapter(engine, files, [main, rival])
  let taken: string | null = null
  let voice: WhoseVoice = null
  let sentences: Automaton | null = null
  let awaited: Automaton | null = null
  let unlikely: readonly string[] = []
  /** There are about ten questions, each with its grammar, and the product goes back and forth between them. */
  const automata = new Map<string, { sentences: Automaton; awaited: Automaton | null }>()

  const take = (grammar: EarGrammar): Outcome => {
    unlikely = grammar.unlikely ?? []
    if (taken === grammar.id) return done(undefined)
    taken = null
    for (const decoder of [main, rival]) for (const entry of grammar.pronunciations) addWord(decoder, entry)
    const missing = jsgfWords(grammar.jsgf).filter((word) => main.lookup_word(word) === null)
    if (missing.length > 0) return refuse(`I cannot listen: I do not know how to say ${missing.join(", ")}.`)
    const known = automata.get(grammar.id)
    sentences = known?.sentences ?? readFlatGrammar(grammar.jsgf)
    if (!sentences) return refuse("I cannot listen: The grammar cannot be read.")
    const outcome = setAutomaton(engine, main, sentences)
    if (!outcome.ok) return refuse(`I cannot listen: ${outcome.because}`)
    awaited = known ? known.awaited : readAwaited(grammar.jsgf)
    automata.set(grammar.id, { sentences, awaited })
    taken = grammar.id
    return outcome
  }

  const againstPhones = (samples: Float32Array): Decoded | null => {
    rival.set_config("wip", enginesOwnWordCost)
    return setGrammar(engine, rival, phoneLoop).ok ? decode(engine, rival, samples) : null
  }

  const likeliestIn = (automaton: Automaton, samples: Float32Array): Decoded | null => {
    rival.set_config("wip", wordCost)
    return setAutomaton(engine, rival, automaton).ok ? decode(engine, rival, samples) : null
  }
  const likeliestOf = (sentences: readonly string[], samples: Float32Array): Decoded | null =>
    sentences.length === 0 ? null : likeliestIn(readFlatGrammar(grammarOf(sentences))!, samples)

  const rivalsTo = ({ words }: Decoded) => {
    const isSentence = (other: readonly string[]) => sentences !== null && accepts(sentences, other)
    return rivalsOf(
      words.map((word) => word.text),
      isSentence,
    )
  }

  const isAwaited = (said: string) => awaited !== null && accepts(awaited, said.split(" "))

  /** The answer, or in its place one that is so much likelier to be said that it may fit a little worse. */
  const favour = (found: Decoded, samples: Float32Array, moment: Moment): Decoded => {
    const likelier = rivalsTo(found).filter((other) => headStart(other, moment) > headStart(found.text, moment))
    const others = [
      likeliestOf(likelier, samples),
      awaited && !isAwaited(found.text) ? likeliestIn(awaited, samples) : null,
    ]
    return others.reduce<Decoded>(
      (best, other) => (other && rankIn(moment, other) > rankIn(moment, best) ? other : best),
      found,
    )
  }

  /**
   * The best answer with what speaks for and against it; null where it is far from anything that was said. The search
   * through the whole grammar takes short cuts, and now and then a rival fits better than what it found.
   */
  const weigh = (given: Float32Array, before?: Float32Array): Weighed | null => {
    if (taken === null || given.length < shortest * files.pack.rateHz) return null
    const samples = dither(given)
    const noise = surroundings.fit(samples, before && dither(before))
    if (noise.snrDb < leastSnrDb && !noise.wavers) return null
    const found = decode(engine, main, samples)
    const free = found && againstPhones(samples)
    if (!found || found.words.length === 0 || !free || !isNearlyFit(measureFit(found, free, noise))) return null
    const nearestTo = (answer: Decoded) => likeliestOf(rivalsTo(answer), samples)
    const isUnlikely = (said: string) => saysAgain(said, unlikely)
    const moment = { isAwaited, isUnlikely, noise: noiseOf(noise) }
    const rank = (one: Decoded) => rankIn(moment, one)
    const first = favour(found, samples, moment)
    let [best, nearest] = [first, nearestTo(first)]
    for (let swaps = 0; nearest && rank(nearest) > rank(best) && swaps < mostSwaps; swaps++)
      [best, nearest] = [nearest, nearestTo(nearest)]
    const lead = nearest && leadOf(best, nearest, moment)
    const odds = nearest && rank(best) - rank(nearest)
    const weighed = { best, fit: measureFit(best, free, noise), nearest, lead, odds }
    if (hearingOf(weighed, voice)) surroundings.remember()
    return weighed
  }

  const hear = (samples: Float32Array, before?: Float32Array) => {
    const weighed = weigh(samples, before)
    return weighed && hearingOf(weighed, voice)
  }
  const fitTo = (next: WhoseVoice) => {
    voice = next
  }
  return { rateHz: files.pack.rateHz, take, fitTo, hear, weigh, startAnew: surroundings.forget }
}

const rankIn = (moment: Moment, { nats, text }: Decoded) => nats + headStart(text, moment)

/** A likelier value is chosen for it, but not believed for it; and of a sound that the model is known to miss neither is. */
const leadOf = (best: Decoded, nearest: Decoded, moment: Moment): number =>
  best.nats - nearest.nats - Math.abs(soundStart(best.text, moment) - soundStart(nearest.text, moment))

/** Null where the answer is not believed at all. */
export const hearingOf = ({ best, fit, nearest, lead, odds }: Weighed, voice: WhoseVoice = null): Hearing | null => {
  const fitting = marginFor(fit, lead, voice)
  if (fitting === null) return null
  const margin = yesMargin(best.text, fitting, lead, fit.isNewVoice)
  const isTossUp = nearest !== null && odds !== null && odds < tossUpLead
  return { text: best.text, alternatives: isTossUp ? [nearest.text] : [], words: best.words, margin, fit }
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
