/**
 * What the prompts that a worker read tell about his voice. The middle one of all counts and not the mean: a prompt that
 * was cut short by a door, or that somebody else said, must not make the ear laxer.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { levelOf } from "./margins"
import type { Fit } from "./measureFit"
import { mostEase, type VoiceFit } from "./VoiceFit"

/** With fewer prompts the middle one is a matter of luck. */
export const fewestPrompts = 12

/**
 * A little below the middle prompt of the voice that fits worst of the four that the limits were set by (-0.5), so that
 * none of them is eased. `npm run bench -- ear fit` prints it for each.
 */
const usualLevel = -0.9

/** `fits`: one for each prompt that was heard. Refuses where they are too few. */
export const learnVoice = (fits: readonly Fit[]): Outcome<VoiceFit> => {
  if (fits.length < fewestPrompts)
    return refuse(`Only ${fits.length} sentences were heard, and it takes ${fewestPrompts}.`)
  const shortfall = usualLevel - middleLevel(fits)
  const ease = Math.round(100 * Math.min(mostEase, Math.max(0, shortfall))) / 100
  return done({ v: 1, ease, prompts: fits.length })
}

/** The lower one of two in the middle. Throws where there is no fit. */
export const middleLevel = (fits: readonly Fit[]): number => {
  const levels = fits.map(levelOf).sort((a, b) => a - b)
  const middle = levels[Math.floor((levels.length - 1) / 2)]
  if (middle === undefined) throw new Error("There is no fit to take the middle of.")
  return middle
}
