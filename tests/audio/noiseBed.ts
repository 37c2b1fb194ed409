/**
 * Noise that goes on for ever behind the words: a stretch of each kind is made once and then runs in a ring. Beside
 * white, pink and hum there is babble (several synthetic voices at site talk, all at once) and a buzz like a drill's:
 * harmonics of a motor whose speed wavers, and the rattle of its gears.
 */
import { fliteVoices, speakToSamples } from "../../src/cli/flite"
import { makeNoise } from "../../src/cli/makeNoise"
import { levelOf } from "../../src/cli/trimSpeech"
import { siteTalk } from "./earSentences"

export const bedKinds = ["white", "pink", "babble", "buzz"] as const
export type BedKind = (typeof bedKinds)[number]

export interface NoiseBed {
  /** The next samples, with a root mean square of one over the whole ring. */
  take(count: number): Float32Array
}

const rateHz = 16_000
const ringSeconds = 45
const talkers = 5

const rings = new Map<string, Promise<Float32Array>>()

/** `seed` chooses the noise itself for white and pink, and where the ring begins for all. */
export const createNoiseBed = async (kind: BedKind, seed: number): Promise<NoiseBed> => {
  const key = kind === "white" || kind === "pink" ? `${kind} ${seed % 4}` : kind
  if (!rings.has(key)) rings.set(key, makeRing(kind, seed))
  const ring = await rings.get(key)!
  let at = (seed * 48_611) % ring.length
  return {
    take: (count) => {
      const out = new Float32Array(count)
      for (let n = 0; n < count; n++) {
        out[n] = ring[at]!
        at = (at + 1) % ring.length
      }
      return out
    },
  }
}

const makeRing = async (kind: BedKind, seed: number): Promise<Float32Array> => {
  const count = ringSeconds * rateHz
  if (kind === "white" || kind === "pink") return makeNoise({ kind, seed: (seed % 4) + 1, count, rateHz })
  const samples = kind === "babble" ? await babble(count) : buzz(count)
  const level = levelOf(samples)
  return samples.map((sample) => sample / level)
}

/** Voices that talk without a pause, each from a sentence of its own, all as loud as one another. */
const babble = async (count: number): Promise<Float32Array> => {
  const whole = new Float32Array(count)
  for (let talker = 0; talker < talkers; talker++) {
    const voice = fliteVoices[talker % fliteVoices.length]!
    const stretch = 0.9 + 0.08 * talker
    for (let at = 0, next = talker * 7; at < count; next++) {
      const { samples } = await speakToSamples(siteTalk[next % siteTalk.length]!, voice, { stretch })
      const level = levelOf(samples)
      for (let n = 0; n < samples.length && at + n < count; n++) whole[at + n]! += samples[n]! / level
      at += samples.length
    }
  }
  return whole
}

/** A motor at about 140 Hz that wavers by a tenth every second or so. */
const buzz = (count: number): Float32Array => {
  const rattle = makeNoise({ kind: "white", seed: 9, count, rateHz })
  let turn = 0
  return Float32Array.from({ length: count }, (_, n) => {
    const seconds = n / rateHz
    turn += (2 * Math.PI * 140 * (1 + 0.1 * Math.sin(2 * Math.PI * 0.8 * seconds))) / rateHz
    let sum = 0
    for (let partial = 1; partial <= 28; partial++) sum += Math.sin(partial * turn + partial * partial) / partial ** 0.6
    return sum + 0.5 * rattle[n]! * (1 + Math.sin(2 * turn))
  })
}
