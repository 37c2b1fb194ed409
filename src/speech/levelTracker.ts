/**
 * Follows how loud the background is. It is the lowest smoothed level of the last seconds, so it falls at once and rises
 * only when nothing quieter has been heard for that long: speech has gaps, a hum has none.
 */

/** How far back the lowest level is looked for, in frames of 10 ms, held as so many blocks. */
const blockFrames = 40
const blocks = 5
/** Nothing is quieter than this, in decibels of full scale: a muted microphone would make any sound look loud. */
const leastDb = -75
/** Share of a new frame in the smoothed level. */
const smoothing = 0.5

export interface LevelTracker {
  /** Takes a frame and gives how many decibels it is above the background. */
  follow(frame: Float32Array): number
  readonly levelDb: number
  readonly backgroundDb: number
}

export const createLevelTracker = (): LevelTracker => {
  let smoothed: number | null = null
  let level = leastDb
  let blockLeast = Number.POSITIVE_INFINITY
  let inBlock = 0
  let past: number[] = []

  const background = () => Math.max(leastDb, Math.min(blockLeast, ...past))
  return {
    follow: (frame) => {
      const power = frame.reduce((sum, sample) => sum + sample * sample, 0) / frame.length
      smoothed = smoothed === null ? power : smoothed + smoothing * (power - smoothed)
      level = Math.max(leastDb, 10 * Math.log10(smoothed + 1e-12))
      blockLeast = Math.min(blockLeast, level)
      if (++inBlock === blockFrames) {
        past = [...past, blockLeast].slice(-blocks)
        blockLeast = Number.POSITIVE_INFINITY
        inBlock = 0
      }
      return level - background()
    },
    get levelDb() {
      return level
    },
    get backgroundDb() {
      return background()
    },
  }
}
