/**
 * One utterance through one decoder: the words of the best path, when they were said, and how well the path fits. The
 * path's score only means something beside another path's score over the same sound.
 */
import type { Outcome } from "../facts/Outcome"
import { done, refuse } from "../facts/Outcome"
import { copyIn, type Engine } from "./engine"
import type { Automaton } from "./flatGrammar"
import type { RawDecoder } from "./loadDecoder"

/** Nats in one unit of the engine's scores: its logarithm has base 1.0001 and it drops ten bits. */
const natsPerUnit = 1024 * Math.log(1.0001)

export interface DecodedWord {
  text: string
  /** Seconds from the start of the utterance. */
  start: number
  end: number
  /** The engine's own figure, 0 to 1; good and bad answers overlap. */
  score: number
}

/** One stretch of the path: a word, or silence, or noise. */
export interface Segment {
  text: string
  isWord: boolean
  /** Frames of 10 ms. */
  from: number
  frames: number
  /** Log likelihood of this stretch in nats. */
  nats: number
}

export interface Decoded {
  text: string
  words: DecodedWord[]
  /** Words and what lies between them, in order and without gaps. */
  segments: Segment[]
  /** Log likelihood of the whole path in nats. */
  nats: number
}

/** The engine gives the score of a stretch with three decimals; this is less than any it can give. */
const leastScore = 0.0005

/** Takes a grammar in place of the old one. Refuses, keeping the old one, over a mistake or a word it cannot say. */
export const setGrammar = (engine: Engine, decoder: RawDecoder, jsgf: string): Outcome => {
  const text = copyIn(engine, new TextEncoder().encode(jsgf))
  const parsed = engine._jsgf_parse_string(text, 0)
  engine._free(text)
  if (parsed === 0) return refuse("The grammar cannot be read.")
  const rule = engine._jsgf_get_public_rule(parsed)
  const logmath = engine._decoder_logmath(decoder.cdecoder)
  const fsg = rule === 0 ? 0 : engine._jsgf_build_fsg(parsed, rule, logmath, Number(decoder.get_config("lw")))
  engine._jsgf_grammar_free(parsed)
  if (fsg === 0) return refuse("The grammar has no public rule.")
  // The decoder owns the graph from here on, also when it refuses it: freeing it here would free it twice.
  const taken = engine._decoder_set_fsg(decoder.cdecoder, fsg)
  return taken < 0 ? refuse("The grammar has a word that the dictionary lacks.") : done(undefined)
}

/** Takes an automaton in place of the grammar: the same sentences in far fewer states. Refuses as `setGrammar` does. */
export const setAutomaton = (engine: Engine, decoder: RawDecoder, { arcs, ends }: Automaton): Outcome => {
  const text = new TextEncoder()
  const name = copyIn(engine, text.encode("sentences"))
  const weight = Number(decoder.get_config("lw"))
  const final = arcs.length
  const fsg = engine._fsg_model_init(name, engine._decoder_logmath(decoder.cdecoder), weight, final + 1)
  engine._free(name)
  const ids = new Map<string, number>()
  for (const word of new Set(arcs.flatMap((out) => [...out.keys()]))) {
    const at = copyIn(engine, text.encode(word))
    ids.set(word, engine._fsg_model_word_add(fsg, at))
    engine._free(at)
  }
  for (const [from, out] of arcs.entries())
    for (const [word, to] of out) engine._fsg_model_trans_add(fsg, from, to, 0, ids.get(word)!)
  for (const end of ends) engine._fsg_model_null_trans_add(fsg, end, final, 0)
  engine._fsg_set_states(fsg, 0, final)
  const taken = engine._decoder_set_fsg(decoder.cdecoder, fsg)
  return taken < 0 ? refuse("The grammar has a word that the dictionary lacks.") : done(undefined)
}

/** Null where the sound is too short for any sentence of the grammar. */
export const decode = (engine: Engine, decoder: RawDecoder, samples: Float32Array): Decoded | null => {
  decoder.start()
  decoder.process_audio(samples, false, true)
  decoder.stop()
  const scoreAt = engine._malloc(4)
  const found = engine._decoder_hyp(decoder.cdecoder, scoreAt)
  const nats = engine.HEAP32[scoreAt >> 2]! * natsPerUnit
  engine._free(scoreAt)
  if (found === 0) return null
  const segments = (decoder.get_alignment().w ?? [])
    .filter(({ t }) => t !== "(NULL)")
    .map(({ t, b, d, p }) => ({
      text: t.replace(/\(\d+\)$/, ""),
      isWord: !/^[<[+]/.test(t),
      from: Math.round(b * 100),
      frames: Math.round(d * 100),
      nats: 1024 * Math.log(Math.max(p, leastScore)),
      score: p,
    }))
  const words = segments
    .filter((segment) => segment.isWord)
    .map(({ text, from, frames, score }) => ({ text, start: from / 100, end: (from + frames) / 100, score }))
  return { text: words.map((word) => word.text).join(" "), words, segments, nats }
}
