/**
 * Sound in four bits a sample: IMA ADPCM as the Interactive Multimedia Association published it in 1992, low nibble
 * first, without block headers. Each clip starts from nought with a step of its own, so any clip can be read alone.
 */

/** How far one unit of a nibble goes, for each of the 89 states. From the published table; each is about 1.1 × the last. */
const stepSizes = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73, 80, 88, 97, 107, 118,
  130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494, 544, 598, 658, 724, 796, 876, 963, 1060,
  1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499, 2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484,
  7132, 7845, 8630, 9493, 10442, 11487, 12635, 13899, 15289, 16818, 18500, 20350, 22385, 24623, 27086, 29794, 32767,
]
/** How the state moves after a nibble of this size. */
const stepMoves = [-1, -1, -1, -1, 2, 4, 6, 8]

export interface Packed {
  /** Two samples a byte; an odd last sample leaves the high nibble empty. */
  bytes: Uint8Array
  /** The state that the clip starts in, 0 to 88. */
  startStep: number
}

interface State {
  value: number
  step: number
}

const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value))

/** Moves the state by one nibble, exactly as every decoder does. */
const follow = (state: State, nibble: number): void => {
  const size = stepSizes[state.step]!
  let change = size >> 3
  if (nibble & 4) change += size
  if (nibble & 2) change += size >> 1
  if (nibble & 1) change += size >> 2
  state.value = clamp(state.value + (nibble & 8 ? -change : change), -32768, 32767)
  state.step = clamp(state.step + stepMoves[nibble & 7]!, 0, stepSizes.length - 1)
}

/** The nibble that comes nearest to the wanted value. */
const choose = (state: State, wanted: number): number => {
  const size = stepSizes[state.step]!
  const away = wanted - state.value
  const magnitude = Math.min(7, Math.floor((Math.abs(away) * 4) / size))
  return away < 0 ? magnitude | 8 : magnitude
}

/** States worth starting in: from silence to a hard attack. */
const startSteps = [0, 8, 16, 24, 32, 40, 48]

/** Packs samples of -1 to 1. The start that loses least is found by trying. */
export const encodeAdpcm = (samples: Float32Array): Packed => {
  const wanted = Int16Array.from(samples, (sample) => Math.round(clamp(sample * 32768, -32768, 32767)))
  const tries = startSteps.map((startStep) => encodeFrom(wanted, startStep))
  return tries.reduce((best, one) => (one.lost < best.lost ? one : best))
}

const encodeFrom = (wanted: Int16Array, startStep: number): Packed & { lost: number } => {
  const bytes = new Uint8Array((wanted.length + 1) >> 1)
  const state = { value: 0, step: startStep }
  let lost = 0
  wanted.forEach((value, n) => {
    const nibble = choose(state, value)
    follow(state, nibble)
    lost += (state.value - value) ** 2
    bytes[n >> 1]! |= nibble << (n & 1 ? 4 : 0)
  })
  return { bytes, startStep, lost }
}

/** Unpacks so many samples, each -1 to 1. */
export const decodeAdpcm = ({ bytes, startStep }: Packed, count: number): Float32Array => {
  const samples = new Float32Array(count)
  const state = { value: 0, step: startStep }
  for (let n = 0; n < count; n++) {
    follow(state, (bytes[n >> 1]! >> (n & 1 ? 4 : 0)) & 15)
    samples[n] = state.value / 32768
  }
  return samples
}
