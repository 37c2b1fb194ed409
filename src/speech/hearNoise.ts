/**
 * What the noise behind an utterance sounds like, band by band, and what the speech would have been without it. The
 * quietest frames of an utterance hold no speech: the endpointer keeps some on both sides of it.
 */

/** Log power in mel bands, frame after frame. */
export interface Spectrum {
  data: Float32Array
  bands: number
}

export interface NoisySpeech {
  /** Log power of the noise in each band. */
  noise: Float64Array
  /** Mean of the log power in each band as it is, noise and all. */
  heardMean: Float64Array
  /** Mean of the log power in each band of the speech alone, as far as it can be told. */
  cleanMean: Float64Array
  /** How far the speech stands above the noise, in decibels. */
  snrDb: number
}

/** Share of the frames that are taken for noise. */
const quietShare = 0.2
/** What is left of a band's power where the noise is as strong as what was heard. */
const floorShare = 0.01
const nepersToDb = 10 / Math.LN10

export const hearNoise = ({ data, bands }: Spectrum): NoisySpeech => {
  const frames = Math.floor(data.length / bands)
  const frame = (at: number) => data.subarray(at * bands, (at + 1) * bands)
  const power = Float64Array.from({ length: frames }, (_, at) => frame(at).reduce((sum, x) => sum + Math.exp(x), 0))
  const byPower = [...power.keys()].sort((a, b) => power[a]! - power[b]!)
  const quiet = byPower.slice(0, Math.max(1, Math.round(frames * quietShare)))
  const loud = byPower.slice(-quiet.length)

  const noise = new Float64Array(bands)
  for (const at of quiet) {
    frame(at).forEach((x, band) => {
      noise[band] = noise[band]! + x / quiet.length
    })
  }
  const heardMean = new Float64Array(bands)
  const cleanMean = new Float64Array(bands)
  for (let at = 0; at < frames; at++) {
    frame(at).forEach((x, band) => {
      const share = Math.max(floorShare, 1 - Math.exp(noise[band]! - x))
      heardMean[band] = heardMean[band]! + x / frames
      cleanMean[band] = cleanMean[band]! + (x + Math.log(share)) / frames
    })
  }
  const total = (places: number[]) => places.reduce((sum, at) => sum + power[at]!, 0) / places.length
  const snrDb = nepersToDb * Math.log((total(loud) + 1) / (total(quiet) + 1))
  return { noise, heardMean, cleanMean, snrDb }
}
