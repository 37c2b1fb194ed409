/**
 * Follows how loud the background is. It is the lowest smoothed level of the last seconds, so it falls at once and rises
 * only when nothing quieter has been heard for that long: speech has gaps, a hum has none.
 */

/** How far back the lowest level is looked for, in frames of 10 ms, held as so many blocks. */
const blockFrames = 40
const blocks = 5
/** Nothing is quieter than this, in decibels of full scale: a muted microphone would make any sound look loud. */
const leastDb = -75 /** Background that is assumed until enough has been heard. */
const assumedDb = -60

export interface LevelTracker {
  /** Takes a frame and gives how many decibels it is above the background. */
  follow(frame: Float32Array): number
  readonly levelDb: number
  readonly backgroundDb: number
}

export const createLevelTracker = (): LevelTracker => {
  let lastPower: number | null = null
  let level = leastDb
  let blockLeast = Number.POSITIVE_INFINITY
  let inBlock = 0
  // A sound that begins with speech must not make that speech the background.
  let past: number[] = Array(blocks).fill(assumedDb)

  const background = () => Math.max(leastDb, Math.min(blockLeast, ...past))
  return {
    follow: (frame) => {
      const power = frame.reduce((sum, sample) => sum + sample * sample, 0) / frame.length
      // Two frames together are steadier than one, and unlike a decaying mean they forget a loud vowel at once.
      level = Math.max(leastDb, 10 * Math.log10((power + (lastPower ?? power)) / 2 + 1e-12))
      lastPower = power
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
