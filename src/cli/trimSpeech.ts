/**
 * Finds where the words are in a stretch of synthetic speech. A soft "f" or "s" is a hundred times weaker than a vowel,
 * so the bar lies low and a little is kept on both sides.
 */

const frameSeconds = 0.005
/** Below the loudest frame by this factor, it is silence. */
const silentShare = 0.008

export interface Stretch {
  /** First sample of the words. */
  from: number
  /** One past their last sample. */
  to: number
}

/** The whole is returned as a stretch of length nought when it is silent. */
export const findSpeech = (samples: Float32Array, rate: number): Stretch => {
  const frame = Math.max(1, Math.round(frameSeconds * rate))
  const levels: number[] = []
  for (let at = 0; at < samples.length; at += frame) levels.push(levelOf(samples.subarray(at, at + frame)))
  const bar = levels.reduce((most, level) => Math.max(most, level), 0) * silentShare
  const first = levels.findIndex((level) => level > bar)
  const last = levels.findLastIndex((level) => level > bar)
  if (first < 0) return { from: 0, to: 0 }
  return { from: first * frame, to: Math.min(samples.length, (last + 1) * frame) }
}

/** The words alone, with `marginMs` of what surrounds them and soft edges, so that no cut is heard as a click. */
export const trimSpeech = (samples: Float32Array, rate: number, marginMs = 12): Float32Array => {
  const { from, to } = findSpeech(samples, rate)
  const margin = Math.round((marginMs / 1000) * rate)
  const words = samples.slice(Math.max(0, from - margin), Math.min(samples.length, to + margin))
  for (let n = 0; n < Math.min(margin, words.length); n++) {
    const share = n / margin
    words[n]! *= share
    words[words.length - 1 - n]! *= share
  }
  return words
}

/** Root mean square of the samples, 0 for none. */
export const levelOf = (samples: Float32Array): number =>
  samples.length === 0 ? 0 : Math.sqrt(samples.reduce((sum, x) => sum + x * x, 0) / samples.length)
