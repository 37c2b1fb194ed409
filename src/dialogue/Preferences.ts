/**
 * How the worker wants to be spoken to. Steps, not decibels or words a minute: the voice behind them differs from device
 * to device, and "louder" means louder than now.
 */
import { z } from "zod"

/**
 * `full`: everything is read back. `short`: routine steps are only a sound, routine values the fewest words. `warnings`:
 * routine facts are only a sound. Readings, doubtful values and warnings are always said whole.
 */
export const Verbosity = z.enum(["full", "short", "warnings"])
export type Verbosity = z.infer<typeof Verbosity>

/** How many steps the voice can be turned either way. */
export const mostSteps = 3

const Steps = z.number().int().min(-mostSteps).max(mostSteps)

export const Preferences = z.object({
  verbosity: Verbosity,
  /** Loudness of the voice: 0 as it comes, below softer, above louder. */
  volumeStep: Steps,
  /** Speed of the voice: 0 as it comes, below slower, above faster. */
  rateStep: Steps,
})
export type Preferences = z.infer<typeof Preferences>

/** What holds until the worker says otherwise. */
export const usualPreferences: Preferences = { verbosity: "full", volumeStep: 0, rateStep: 0 }
