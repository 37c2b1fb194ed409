/** An ear without margins, to compare with: the engine's best answer is taken as it comes, whatever was said. */
import { loadEngineInNode } from "../../../src/cli/openEar"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import { decode, setAutomaton } from "../../../src/speech/decode"
import type { EarFiles } from "../../../src/speech/EarPack"
import type { Automaton } from "../../../src/speech/flatGrammar"
import { readFlatGrammar } from "../../../src/speech/flatGrammar"
import { loadDecoder, type RawDecoder } from "../../../src/speech/loadDecoder"
import { createNoiseAdapter } from "../../../src/speech/noiseAdapter"
import type { LoopEar } from "./soundLoop"

export interface BareEarChoice {
  files: EarFiles
  /** Whether the model is fitted to the noise, as ours is; else the engine's own noise removal is on. */
  fitted: boolean
}

export const createBareEar = async ({ files, fitted }: BareEarChoice): Promise<LoopEar> => {
  const engine = await loadEngineInNode()
  const decoder = loadDecoder(engine, files, fitted ? { compallsen: true, remove_noise: false } : {})
  const surroundings = fitted ? createNoiseAdapter(engine, files, [decoder]) : null
  const automata = new Map<string, Automaton>()
  let taken = ""
  return {
    rateHz: files.pack.rateHz,
    take: ({ id, jsgf, pronunciations }: EarGrammar) => {
      if (taken === id) return { ok: true }
      for (const [word, sound] of pronunciations) addWay(decoder, word, sound)
      const automaton = automata.get(id) ?? readFlatGrammar(jsgf)
      if (!automaton) return { ok: false }
      automata.set(id, automaton)
      taken = id
      return setAutomaton(engine, decoder, automaton)
    },
    hear: (samples) => {
      if (samples.length < 0.15 * files.pack.rateHz) return null
      surroundings?.fit(samples)
      const best = decode(engine, decoder, samples)
      return best && best.words.length > 0 ? { text: best.text, alternatives: [], words: best.words, margin: 1 } : null
    },
  }
}

const addWay = (decoder: RawDecoder, word: string, sound: string) => {
  for (let way = 1; ; way++) {
    const name = way === 1 ? word : `${word}(${way})`
    const known = decoder.lookup_word(name)
    if (known === sound) return
    if (known === null) return decoder.add_words([name, sound])
  }
}
