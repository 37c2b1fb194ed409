/**
 * What the noise behind an utterance sounds like, band by band, and what the speech would have been without it. The
 * endpointer keeps a little of the surroundings on both sides of the words, and there the noise is heard alone.
 */

/** Log power in mel bands, frame after frame. */
export interface Spectrum {
  data: Float32Array
  bands: number
}

export interface NoisySpeech {
  /** Mean of the log power of the noise in each band. */
  noise: Float64Array
  /** The frames that the noise was told by, each a log power for every band. */
  noiseFrames: readonly Float32Array[]
  /** How much the whole power of the noise wavers from frame to frame, in nepers. */
  wavers: number
  /** Mean of the log power in each band as it is, noise and all. */
  heardMean: Float64Array
  /** Mean of the log power in each band of the speech alone, as far as it can be told. */
  cleanMean: Float64Array
  /** How loud the speech is: log of the power that its loudest frames have above the noise. */
  loudness: number
  /** How far the speech stands above the noise, in decibels. */
  snrDb: number
}

/** Frames of 10 ms at the start and at the end of an utterance that hold no words as a rule. */
const [edgeBefore, edgeAfter] = [30, 20]
/** A frame that is louder than the quietest by so much, in nepers of power, is taken for speech after all. */
const louderIsSpeech = 2.3
/** How many times the power of the noise two frames of speech have together. */
const louderThanNoise = 2
/**
 * With fewer frames than this of what was heard before, the edges tell the noise; they do it worse, as a drowned "s" at the
 * start or the end is in them.
 */
const leastBefore = 30
/** With fewer frames than this the noise cannot be told by the edges. */
const leastEdge = 15
/** Share of the frames that are taken for noise where the edges hold none, and for the loudest. */
const quietShare = 0.2
/** The quietest frames of white noise are quieter than its mean by so much in the bands where it is loudest. */
const quietBias = 1.25
/** What is left of a band's power where nothing stands above the noise. */
const floorShare = 0.01
/**
 * How far the mean of the logarithms lies below the logarithm of the mean, in nepers: speech is loud and soft by turns,
 * and silence counts. It is 3.9 on 60 sentences of three synthetic voices, with a spread of 0.5 from sentence to sentence;
 * at 10 dB of white noise the ear heard best with 3.
 */
const logOfMeanFalls = 3
/** Decibels of a band above the noise up to which it is estimated, and from which it is taken as it was heard. */
const [estimatedUpTo, heardFrom] = [15, 30]
const nepersToDb = 10 / Math.LN10

/** `before` is the same of what was heard right before it: there is noise alone, and more of it than at the edges. */
export const hearNoise = ({ data, bands }: Spectrum, before: Float32Array = new Float32Array(0)): NoisySpeech => {
  const frames = Math.floor(data.length / bands)
  const frame = (at: number) => data.subarray(at * bands, (at + 1) * bands)
  const powerOf = (one: Float32Array) => one.reduce((sum, x) => sum + Math.exp(x), 0)
  const power = Float64Array.from({ length: frames }, (_, at) => powerOf(frame(at)))
  const meanPower = (places: readonly number[]) => places.reduce((sum, at) => sum + power[at]!, 0) / places.length
  const byPower = [...power.keys()].sort((a, b) => power[a]! - power[b]!)
  const quiet = byPower.slice(0, Math.max(1, Math.round(frames * quietShare)))
  const loud = byPower.slice(-quiet.length)
  const limit = meanPower(quiet) * Math.exp(louderIsSpeech)
  const edges = [...power.keys()].filter((at) => at < edgeBefore || at >= frames - edgeAfter)
  const still = edges.filter((at) => power[at]! <= limit)
  const alone = still.length >= leastEdge ? still : quiet
  const long = Array.from({ length: Math.floor(before.length / bands) }, (_, at) =>
    before.subarray(at * bands, (at + 1) * bands),
  ).filter((one) => powerOf(one) <= limit)
  const noiseFrames = long.length >= leastBefore ? long : alone.map(frame)

  const spoken = spokenIn(power, meanPower(alone))
  const noisePower = meanOver(quiet, frame, bands, Math.exp)
  const wholePower = meanOver(spoken, frame, bands, Math.exp)
  const cleanMean = meanOver(spoken, frame, bands).map((heard, band) => {
    const [whole, hush] = [wholePower[band]!, noisePower[band]!]
    const left = Math.max(floorShare * whole, whole - quietBias * hush)
    const db = nepersToDb * Math.log(whole / hush)
    const share = Math.min(1, Math.max(0, (db - estimatedUpTo) / (heardFrom - estimatedUpTo)))
    return share * heard + (1 - share) * (Math.log(left) - logOfMeanFalls)
  })
  return {
    noise: meanOver([...noiseFrames.keys()], (at) => noiseFrames[at]!, bands),
    noiseFrames,
    wavers: spreadOf(noiseFrames.map((one) => Math.log(powerOf(one) + Number.MIN_VALUE))),
    heardMean: meanOver(byPower, frame, bands),
    cleanMean,
    loudness: Math.log(Math.max(1, meanPower(loud) - meanPower(alone))),
    snrDb: nepersToDb * Math.log((meanPower(loud) + 1) / (meanPower(quiet) + 1)),
  }
}

/** From the first to the last frame that stands above the noise, with the usual edges: a long wait would bend the mean. */
const spokenIn = (power: Float64Array, noise: number): number[] => {
  const isLoud = (at: number) => (power[at]! + (power[at + 1] ?? power[at]!)) / 2 > louderThanNoise * noise
  const loud = [...power.keys()].filter(isLoud)
  if (loud.length === 0) return [...power.keys()]
  const [from, to] = [loud[0]! - edgeBefore, loud.at(-1)! + edgeAfter]
  return [...power.keys()].filter((at) => at >= from && at <= to)
}

const spreadOf = (values: readonly number[]): number => {
  const mean = values.reduce((sum, x) => sum + x, 0) / values.length
  return Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / values.length)
}

/** Mean of each band over some of the frames, of the logarithms or of what `of` makes of them. */
const meanOver = (
  places: readonly number[],
  frame: (at: number) => Float32Array,
  bands: number,
  of: (x: number) => number = (x) => x,
): Float64Array => {
  const mean = new Float64Array(bands)
  for (const at of places)
    frame(at).forEach((x, band) => {
      mean[band] = mean[band]! + of(x) / places.length
    })
  return mean
}
