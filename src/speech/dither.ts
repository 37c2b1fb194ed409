/**
 * A trace of noise in every utterance. Where a microphone gates what is quiet, the sound between words is exactly nought,
 * which the model has never heard: a yes of one synthetic voice of three was lost by it, and is heard with the trace.
 */

/** One step of 16-bit sound: less than any room has. */
const step = 1 / 32_768

/** The samples, -1 to 1, with at most one step added or taken away; the same for the same samples. */
export const dither = (samples: Float32Array): Float32Array => {
  let state = 1
  return samples.map((sample) => {
    // The constants of Numerical Recipes' quick generator.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return sample + step * (state / 2 ** 31 - 1)
  })
}
