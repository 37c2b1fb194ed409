/**
 * Chooses the limits of `margins.ts` on answers whose truth is known: nothing wrong may be taken, and of what is right as
 * much as can be. Each limit is moved along a few steps while the others stand, until none moves any more.
 */
import { type Limits, marginOf, shippedLimits } from "../../../src/speech/margins"
import type { Fit } from "../../../src/speech/measureFit"

/** One answer, and whether it is what was said. */
export interface Judged {
  isForFitting: boolean
  /** Whether what was said is a sentence of the grammar at all. */
  isOurs: boolean
  isRight: boolean
  /** Null where nothing was decoded. */
  fit: Fit | null
  lead: number | null
}

export interface Tally {
  rightPlain: number
  rightAsked: number
  wrongPlain: number
  foreignPlain: number
  wrongAsked: number
  silent: number
}

export const tallyUnder = (limits: Limits, judged: readonly Judged[]): Tally => {
  const tally = { rightPlain: 0, rightAsked: 0, wrongPlain: 0, foreignPlain: 0, wrongAsked: 0, silent: 0 }
  for (const { isOurs, isRight, fit, lead } of judged) {
    const margin = fit && marginOf(fit, lead, limits)
    if (margin === null) tally.silent += 1
    else if (margin < 1) tally[isOurs && isRight ? "rightAsked" : "wrongAsked"] += 1
    else tally[isOurs ? (isRight ? "rightPlain" : "wrongPlain") : "foreignPlain"] += 1
  }
  return tally
}

const steps: Readonly<Record<keyof Limits, readonly number[]>> = {
  silentFit: [-5, -4.6, -4.2, -3.8, -3.4, -3, -2.6, -2.2],
  plainFit: [-3.4, -3, -2.6, -2.3, -2, -1.7, -1.4, -1],
  plainHidden: [10, 20, 40, 60, 90],
  silentHidden: [60, 90, 120, 150, 200, 300],
  plainLead: [5, 10, 15, 20, 25, 30, 40, 50, 70],
}

/** A wrong one that is taken outweighs any number of right ones, and a right one that is asked about half counts. */
const worth = ({ rightPlain, rightAsked, wrongPlain, foreignPlain, wrongAsked }: Tally): number =>
  rightPlain + 0.5 * rightAsked - 0.25 * wrongAsked - 1000 * (wrongPlain + foreignPlain)

export const fitLimits = (judged: readonly Judged[]): Limits => {
  let best = shippedLimits
  let bestWorth = worth(tallyUnder(best, judged))
  for (let moved = true; moved; ) {
    moved = false
    for (const name of Object.keys(steps) as (keyof Limits)[])
      for (const value of steps[name]) {
        const limits = { ...best, [name]: value }
        if (limits.silentFit >= limits.plainFit || limits.plainHidden >= limits.silentHidden) continue
        const found = worth(tallyUnder(limits, judged))
        if (found > bestWorth) [best, bestWorth, moved] = [limits, found, true]
      }
  }
  return best
}
