/** A whole sound at another rate, through the same filter that live sound goes through piece by piece. */
import { createResampler } from "./resampler"

/** Rates in hertz. */
export const resample = (samples: Float32Array, fromHz: number, toHz: number): Float32Array => {
  if (fromHz === toHz) return samples
  const resampler = createResampler(fromHz, toHz)
  const [most, rest] = [resampler.push(samples), resampler.flush()]
  const whole = new Float32Array(most.length + rest.length)
  whole.set(most)
  whole.set(rest, most.length)
  return whole
}
