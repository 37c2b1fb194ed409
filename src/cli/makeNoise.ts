/**
 * Background noise for recordings, the same for the same seed: white (a fan, a jet of air), pink (traffic, a crowd far
 * off) and the hum of the mains with its harmonics. Every kind has a loudness of one before it is scaled.
 */

export const noiseKinds = ["white", "pink", "hum"] as const
export type NoiseKind = (typeof noiseKinds)[number]

export interface NoiseOrder {
  kind: NoiseKind
  count: number
  rateHz: number
  seed: number
}

export const makeNoise = ({ kind, count, rateHz, seed }: NoiseOrder): Float32Array => {
  const random = createRandom(seed)
  const samples = makers[kind](count, rateHz, random)
  const level = Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, count))
  return level === 0 ? samples : samples.map((sample) => sample / level)
}

type Random = () => number

/** Mulberry32: 0 up to 1, good enough for noise and the same everywhere. */
const createRandom = (seed: number): Random => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Normally distributed, by Box and Muller. */
const drawNormal = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())

const white = (count: number, _rateHz: number, random: Random) =>
  Float32Array.from({ length: count }, () => drawNormal(random))

/** White noise through three slow averages, which falls by about 3 dB an octave (Paul Kellet's economy filter). */
const pink = (count: number, _rateHz: number, random: Random) => {
  let [slow, middle, fast] = [0, 0, 0]
  return Float32Array.from({ length: count }, () => {
    const fresh = drawNormal(random)
    slow = 0.99765 * slow + 0.099046 * fresh
    middle = 0.963 * middle + 0.2965164 * fresh
    fast = 0.57 * fast + 1.0526913 * fresh
    return slow + middle + fast + 0.1848 * fresh
  })
}

const mainsHz = 50
/** Strength of 50, 100, 150 Hz and so on, as a transformer has them; the turn of each is drawn. */
const humPartials = [0.5, 1, 0.6, 0.5, 0.25, 0.3, 0.15, 0.1]

const hum = (count: number, rateHz: number, random: Random) => {
  const turns = humPartials.map(() => random())
  return Float32Array.from({ length: count }, (_, n) =>
    humPartials.reduce((sum, strength, at) => {
      const angle = 2 * Math.PI * ((mainsHz * (at + 1) * n) / rateHz + turns[at]!)
      return sum + strength * Math.sin(angle)
    }, 0),
  )
}

const makers: Record<NoiseKind, (count: number, rateHz: number, random: Random) => Float32Array> = { white, pink, hum }
