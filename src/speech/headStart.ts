/**
 * What is said so much more often than what it is mistaken for that it is taken for the answer when both fit about as
 * well. It only chooses: a yes must still lead the plain no by itself, and a reading waits for its yes.
 */
import { noes, yeses } from "./rivals"

/** Nats by which the answer may fall short of its rival. */
const start = 12
/**
 * A bond reads less than an ohm, and "nine point" sounds like "nought point": at 20 dB of white noise it led the truth by
 * up to 27 nats.
 */
const [lowReading, lowStart] = [/\b(nought|zero|oh) point\b/, 25]
/** Hardly a conductor of a house is as long (common practice, no source), and "ninety metres" sounds like "nineteen metres". */
const [longLength, longStart] = [/\b(sixty|seventy|eighty|ninety)( \w+)? metres\b/, -25]

/** A bare yes or no fits in noise no better than "no eight", and that would put a wrong number forward. */
export const headStart = (said: string): number => {
  if (lowReading.test(said)) return lowStart
  if (longLength.test(said)) return longStart
  return yeses.includes(said) || noes.includes(said) ? start : 0
}
