/**
 * Teaches the sound model what its sounds are like in the noise of the moment, instead of cleaning the sound, which bends
 * speech. Each mean is taken from cepstra to log-mel bands, the noise is added as power, and it is taken back; changes
 * over time are damped by as much as the noise drowns their phone. The engine takes each utterance's mean away before it
 * compares, so the means are centred on what that will be.
 */
import { type CepstraTransform, cepstraCount, multiply } from "./cepstra"
import type { NoisySpeech } from "./hearNoise"

/** How the means lie in memory: for each codebook, three streams (the sound, its change, the change of that). */
export interface MeansLayout {
  codebooks: number
  densities: number
}
const streams = 3

/** `clean` are the means of the model as it was trained. Gives new ones in the same order. */
export const compensateMeans = (
  clean: Float32Array,
  { codebooks, densities }: MeansLayout,
  { bands, forward, back }: CepstraTransform,
  { noise, heardMean, cleanMean }: NoisySpeech,
): Float32Array => {
  const out = new Float32Array(clean.length)
  const noisePower = noise.map(Math.exp)
  const heardCepstra = multiply(forward, heardMean, bands)
  const streamLength = densities * cepstraCount
  const shareOf = new Float64Array(bands)

  for (let codebook = 0; codebook < codebooks; codebook++) {
    const start = codebook * streams * streamLength
    shareOf.fill(0)
    for (let at = start; at < start + streamLength; at += cepstraCount) {
      const mel = multiply(back, clean.subarray(at, at + cepstraCount), cepstraCount)
      for (let band = 0; band < bands; band++) {
        const speech = Math.exp(mel[band]! + cleanMean[band]!)
        const both = speech + noisePower[band]!
        shareOf[band] = shareOf[band]! + speech / both / densities
        mel[band] = Math.log(both)
      }
      const cepstra = multiply(forward, mel, bands)
      for (let n = 0; n < cepstraCount; n++) out[at + n] = cepstra[n]! - heardCepstra[n]!
    }
    const damp = dampingOf({ bands, forward, back }, shareOf)
    for (let at = start + streamLength; at < start + streams * streamLength; at += cepstraCount)
      out.set(multiply(damp, clean.subarray(at, at + cepstraCount), cepstraCount), at)
  }
  return out
}

/** What is left of a change of the cepstra when each band keeps only so much of its change. */
const dampingOf = ({ bands, forward, back }: CepstraTransform, shareOf: Float64Array): Float64Array => {
  const damp = new Float64Array(cepstraCount * cepstraCount)
  for (let row = 0; row < cepstraCount; row++)
    for (let column = 0; column < cepstraCount; column++) {
      let sum = 0
      for (let band = 0; band < bands; band++)
        sum += forward[row * bands + band]! * shareOf[band]! * back[band * cepstraCount + column]!
      damp[row * cepstraCount + column] = sum
    }
  return damp
}
