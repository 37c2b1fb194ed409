/**
 * The mean spectrum of the voice that is listened to, gathered over its utterances. The engine takes the mean of each
 * utterance away, so as to forget microphone and room; in a short word that mean is the word itself, and "gas" without it
 * is much like "yes".
 */

/** One utterance: its mean spectrum, how loud its speech is, both in nepers of power, and its length in frames. */
export interface HeardVoice {
  mean: Float64Array
  loudness: number
  frames: number
}

export interface UsualVoice {
  /** The mean that this utterance would have if it held as many sounds as all so far together; its loudness is kept. */
  meanWith(heard: HeardVoice): Float64Array
  /** Counts an utterance as one of this voice. */
  remember(heard: HeardVoice): void
  /** Whether nothing of it was heard yet. */
  readonly isNew: boolean
}

/** What was heard so many frames ago has faded to a third: half a minute of talk. */
const memory = 3000

export const createUsualVoice = (): UsualVoice => {
  let shape: Float64Array | null = null
  let weight = 0
  const mix = ({ mean, loudness, frames }: HeardVoice): Float64Array => {
    const before = shape
    if (!before) return mean.map((x) => x - loudness)
    return mean.map((x, band) => (weight * before[band]! + frames * (x - loudness)) / (weight + frames))
  }
  return {
    meanWith: (heard) => mix(heard).map((x) => x + heard.loudness),
    remember: (heard) => {
      shape = mix(heard)
      weight = Math.min(memory, weight + heard.frames)
    },
    get isNew() {
      return shape === null
    },
  }
}
