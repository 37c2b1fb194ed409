/** Sounds for tests of the ear's front: bursts that rise and fall like syllables, hum and hiss, the same at every run. */
import { joinSamples } from "../../src/speech/joinSamples"

export const rateHz = 16_000

/** A generator of even noise from -1 to 1. */
export const noiseFrom = (seed: number) => {
  let state = seed >>> 0
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) >>> 0
    return state / 2 ** 31 - 1
  }
}

export const silence = (seconds: number) => new Float32Array(Math.round(seconds * rateHz))

/** Something like a word: a buzz with two syllables a quarter of a second, as loud as `level`. */
export const word = (seconds: number, level = 0.2) =>
  Float32Array.from({ length: Math.round(seconds * rateHz) }, (_, n) => {
    const t = n / rateHz
    const buzz = [3, 5, 9, 14].reduce((sum, k) => sum + Math.sin(2 * Math.PI * 130 * k * t), 0) / 4
    return level * buzz * (0.55 - 0.45 * Math.cos(2 * Math.PI * 4 * t))
  })

export const hiss = (seconds: number, level: number, seed = 1) => {
  const noise = noiseFrom(seed)
  return Float32Array.from({ length: Math.round(seconds * rateHz) }, () => level * noise())
}

/** Mains hum with the overtones of a cheap instrument. */
export const hum = (seconds: number, level: number) =>
  Float32Array.from({ length: Math.round(seconds * rateHz) }, (_, n) =>
    [1, 2, 3, 5, 7].reduce((sum, k) => sum + (level / k) * Math.sin((2 * Math.PI * 50 * k * n) / rateHz), 0),
  )

export const join = (...parts: Float32Array[]) => joinSamples(parts)

export const mix = (one: Float32Array, other: Float32Array) => one.map((x, n) => x + (other[n] ?? 0))
