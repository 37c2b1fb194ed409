/** A sentence in a synthetic voice at a fixed loudness, and the noise that stands behind it for a while before and after. */
import { type FliteVoice, fliteVoices } from "../../../src/cli/flite"
import { findSpeech, levelOf } from "../../../src/cli/trimSpeech"
import { speakSentence } from "../../audio/earSentences"
import { type BedKind, bedKinds, createNoiseBed } from "../../audio/noiseBed"

/** Loudness of the worker's voice, as a share of full scale. */
const voiceLevel = 0.08
const rateHz = 16_000
/** Seconds of noise alone: the level of the background is learnt in them, and the endpointer waits. */
const [before, after] = [1.2, 1.4]

export interface Noise {
  kind: BedKind
  /** Root mean square, as a share of full scale. */
  level: number
}

/** `quiet`, or a kind and its decibels below the voice: `white20`, `babble10`. Throws on any other word. */
export const readNoise = (name: string): Noise => {
  if (name === "quiet") return { kind: "white", level: voiceLevel / 10 ** (55 / 20) }
  const [, kind, db] = /^([a-z]+)(\d+)$/.exec(name) ?? []
  if (!bedKinds.includes(kind as BedKind)) throw new Error(`There is no noise "${name}".`)
  return { kind: kind as BedKind, level: voiceLevel / 10 ** (Number(db) / 20) }
}

const spoken = new Map<string, Promise<Float32Array>>()

/** Only the words, without the quiet around them, at 16 kHz. */
export const speak = (text: string, voice: FliteVoice): Promise<Float32Array> => {
  const key = `${voice} ${text}`
  if (!spoken.has(key)) {
    const made = speakSentence(text, voice).then(({ samples }) => {
      const { from, to } = findSpeech(samples, rateHz)
      const words = samples.slice(from, to)
      const gain = voiceLevel / levelOf(words)
      return words.map((sample) => sample * gain)
    })
    spoken.set(key, made)
  }
  return spoken.get(key)!
}

/** `seed` chooses the stretch of noise; `from` and `to` are where the words lie in it. */
export const speakInNoise = async (text: string, voice: FliteVoice, noise: Noise, seed: number) => {
  const words = await speak(text, voice)
  const lead = Math.round(before * rateHz)
  const bed = await createNoiseBed(noise.kind, seed)
  const samples = bed.take(lead + words.length + Math.round(after * rateHz)).map((sample) => sample * noise.level)
  for (let n = 0; n < words.length; n++) samples[lead + n]! += words[n]!
  return { samples, rateHz, from: lead, to: lead + words.length }
}

/** Voices named in `VOICES`, or all. */
export const voicesAsked = (): FliteVoice[] => {
  const names = process.env.VOICES?.split(",") ?? [...fliteVoices]
  return fliteVoices.filter((voice) => names.includes(voice))
}
