/**
 * The least area that takes the heat of a fault before it is cut off: √(I²·t)/k. It takes no cooling into account, which
 * is held to be fair up to five seconds (that bound is from memory), so longer times are refused.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { adiabaticBounds } from "./tables/adiabaticBounds"

export interface Fault {
  /** Fault current in amperes. */
  faultA: number
  /** Time until it is cut off, in seconds. */
  seconds: number
}

/** Least area in mm², not rounded. `k` in A·√s/mm², see `kOf`. */
export const adiabaticMm2 = ({ faultA, seconds, k }: Fault & { k: number }): Outcome<number> =>
  seconds > adiabaticBounds.rows[0]!.mostSeconds
    ? refuse("Above five seconds the sum leaves out too much cooling. Look it up.")
    : done(Math.sqrt(faultA ** 2 * seconds) / k)
