/**
 * Follows how loud the background is. It is the lowest smoothed level of the last seconds, so it falls at once and rises
 * only when nothing quieter has been heard for that long: speech has gaps, a hum has none. A sound that hardly changes for
 * most of a second is no speech and becomes the background there and then. The talk of others is never as quiet as its
 * gaps for long, so where half of what is heard lies well above the gaps, the background does as well.
 */
import { createMiddleLevel } from "./middleLevel"

/** How far back the lowest level is looked for, in frames of 10 ms, held as so many blocks. */
const blockFrames = 40
const blocks = 5
/** Nothing is quieter than this, in decibels of full scale: a muted microphone would make any sound look loud. */
const leastDb = -75
/** Background that is assumed until enough has been heard. */
const assumedDb = -60

/** A block whose levels differ by less, in decibels, holds no speech; two of them in a row, as loud as one another. */
const steadyDb = 3
/** The background is never lifted by more, in decibels: who talks without a pause must still stand above it. */
const mostLiftDb = 10

export interface LevelTracker {
  /**
   * Takes a frame and gives how many decibels it is above the background. What is not to be `learnt` from, such as the
   * app's own voice, says nothing about the talk of others.
   */
  follow(frame: Float32Array, learnt?: boolean): number
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
  let blockMost = leastDb
  let steadyBefore: number | null = null
  const middleOf = createMiddleLevel()
  let liftDb = 0

  const background = () => Math.max(leastDb, Math.min(blockLeast, ...past))

  const endBlock = () => {
    past = [...past, blockLeast].slice(-blocks)
    const steady = blockMost - blockLeast < steadyDb ? blockLeast : null
    if (steady !== null && steadyBefore !== null && Math.abs(steady - steadyBefore) < steadyDb)
      past = Array(blocks).fill(Math.min(steady, steadyBefore))
    steadyBefore = steady
    blockLeast = Number.POSITIVE_INFINITY
    blockMost = leastDb
    inBlock = 0
  }

  return {
    follow: (frame, learnt = true) => {
      const power = frame.reduce((sum, sample) => sum + sample * sample, 0) / frame.length
      // Two frames together are steadier than one, and unlike a decaying mean they forget a loud vowel at once.
      level = Math.max(leastDb, 10 * Math.log10((power + (lastPower ?? power)) / 2 + 1e-12))
      lastPower = power
      blockLeast = Math.min(blockLeast, level)
      blockMost = Math.max(blockMost, level)
      if (++inBlock === blockFrames) endBlock()
      if (learnt) liftDb = Math.min(mostLiftDb, Math.max(0, middleOf(level) - background()))
      return level - background() - liftDb
    },
    get levelDb() {
      return level
    },
    get backgroundDb() {
      return background()
    },
  }
}
