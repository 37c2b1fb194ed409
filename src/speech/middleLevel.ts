/** The level that half of the last while stays below: what the surroundings are like most of the time. */

/** How far back it looks, in frames of 10 ms: in so long nobody gives orders for half of the time. */
const most = 1500
/** How often it is worked out, in frames. */
const every = 20

/** Takes the level of each frame in decibels and gives the middle one. */
export const createMiddleLevel = (): ((level: number) => number) => {
  const levels: number[] = []
  let counted = 0
  let middle = 0
  return (level) => {
    levels.push(level)
    if (levels.length > most) levels.shift()
    if (counted++ % every === 0) middle = [...levels].sort((a, b) => a - b)[Math.floor(levels.length / 2)]!
    return middle
  }
}
