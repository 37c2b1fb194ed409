/**
 * Silence in the place of a stretch of sound. An ear's times of words are a little off, so some sound on either side goes
 * with them, and all of the sound where the stretch comes near its beginning or its end.
 */

/** Wiped on either side, in seconds: about half of what an ear's times are off (our choice, no source). */
export const besideSeconds = 0.12
/** Nearer to an edge than this nothing is left up to it: what stands there is breath and the edge of the word. */
const edgeSeconds = 0.4

/** A copy of the sound; `start` and `end` in seconds from its first sample. */
export const wipeStretch = (
  samples: Float32Array,
  rateHz: number,
  { start, end }: { start: number; end: number },
): Float32Array => {
  const seconds = samples.length / rateHz
  const from = start < edgeSeconds ? 0 : start - besideSeconds
  const to = end > seconds - edgeSeconds ? seconds : end + besideSeconds
  const at = (time: number) => Math.max(0, Math.min(samples.length, Math.round(time * rateHz)))
  return samples.slice().fill(0, at(from), at(Math.max(from, to)))
}
