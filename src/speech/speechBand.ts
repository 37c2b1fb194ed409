/**
 * What the endpointer listens to: vowels and the louder consonants lie below 3 kHz, and much of a hiss or a jet of air
 * above it. A second-order Butterworth low-pass; only levels are taken of it, the recogniser gets the sound itself.
 */
import type { Filter } from "./highPass"

const cornerHz = 3000

/** Keeps its state from piece to piece. */
export const createSpeechBand = (rateHz: number): Filter => {
  const angle = (2 * Math.PI * Math.min(cornerHz, rateHz / 2.5)) / rateHz
  const alpha = Math.sin(angle) / Math.SQRT2
  const cosine = Math.cos(angle)
  const scale = 1 / (1 + alpha)
  const b0 = ((1 - cosine) / 2) * scale
  const a1 = -2 * cosine * scale
  const a2 = (1 - alpha) * scale
  let [x1, x2, y1, y2] = [0, 0, 0, 0]
  return (samples) =>
    samples.map((x) => {
      const y = b0 * (x + 2 * x1 + x2) - a1 * y1 - a2 * y2
      ;[x2, x1, y2, y1] = [x1, x, y1, y]
      return y
    })
}
