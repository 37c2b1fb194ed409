/**
 * Takes away what lies below speech: the constant offset of cheap microphones, handling thumps and the fundamental of
 * the mains. A second-order Butterworth high-pass; it keeps its state from piece to piece.
 */

/** Corner in hertz. The sound model listens from 130 Hz up. */
const cornerHz = 90

export type Filter = (samples: Float32Array) => Float32Array

export const createHighPass = (rateHz: number): Filter => {
  const angle = (2 * Math.PI * cornerHz) / rateHz
  const alpha = Math.sin(angle) / Math.SQRT2
  const cosine = Math.cos(angle)
  const scale = 1 / (1 + alpha)
  const b0 = ((1 + cosine) / 2) * scale
  const b1 = -(1 + cosine) * scale
  const a1 = -2 * cosine * scale
  const a2 = (1 - alpha) * scale
  let [x1, x2, y1, y2] = [0, 0, 0, 0]
  return (samples) =>
    samples.map((x) => {
      const y = b0 * x + b1 * x1 + b0 * x2 - a1 * y1 - a2 * y2
      ;[x2, x1, y2, y1] = [x1, x, y1, y]
      return y
    })
}
