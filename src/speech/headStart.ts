/**
 * What is said so much more often than what it is mistaken for that it is taken for the answer when both fit about as
 * well. It only chooses: a yes must still lead the plain no by itself, and a reading waits for its yes.
 */
import { noes, yeses } from "./rivals"

/** What an answer is chosen by beside its sound. */
export interface Moment {
  /** Whether the open question waits for such a sentence. */
  isAwaited: (said: string) => boolean
  /** Whether it says over again what was said to be wrong. */
  isUnlikely: (said: string) => boolean
  /** How much noise stands behind it, from 0 to 1. */
  noise: number
}

/** Nats by which a yes or a no that is awaited may fall short of its rival. */
const answerStart = 12
/** By which what is awaited may fall short of what is not. */
const awaitedStart = 20
/**
 * A bond reads less than an ohm, and "nine point" sounds like "nought point": at 20 dB of white noise it led the truth by
 * up to 27 nats.
 */
const [lowReading, lowStart] = [/\b(nought|zero|oh) point\b/, 25]
/** The first digit after the point is a nought more often than not: a bond is to read less than a tenth of an ohm. */
const [lowerReading, lowerStart] = [/\bpoint (nought|zero|oh)\b/, 25]
/** Hardly a conductor of a house is as long (common practice, no source), and "ninety metres" sounds like "nineteen metres". */
const [longLength, longStart] = [/\b(sixty|seventy|eighty|ninety)( \w+)? metres\b/, -25]
/** A clamp is put at a round figure: of "fifty" and "fifteen millimetres from the meter" the first is meant. */
const [oddDistance, oddStart] = [/teen (mil|millimetres) (off|from|past|above)\b/, -20]
/**
 * The end of "fifteen" runs into the "m" of "metres", and the model hears "fifty metres": three synthetic voices' teens
 * fell short of it by up to 25 nats in quiet and by mostly 30 at 20 dB of white noise, while "fifty metres" led by 22 to 65
 * and by up to 48. Before other units there is nothing of it.
 */
const [teenBeforeM, teenStart, teenGrows] = [/teen metres\b/, 18, 10]

/** By which what was said to be wrong has to lead whatever else it may be. */
const unlikelyStart = -60

/** Nats that are put right because the model is known to score one sound too low beside another. */
export const soundStart = (said: string, { noise }: Moment): number =>
  teenBeforeM.test(said) ? teenStart + teenGrows * noise : 0

/** Nats that an answer is worth beyond its sound as the one that is likelier to be said. */
export const headStart = (said: string, moment: Moment): number => {
  const isAwaited = moment.isAwaited(said)
  return (
    soundStart(said, moment) +
    (isAwaited ? awaitedStart : 0) +
    (moment.isUnlikely(said) ? unlikelyStart : 0) +
    (isAwaited && (yeses.includes(said) || noes.includes(said)) ? answerStart : 0) +
    (lowReading.test(said) ? lowStart : 0) +
    (lowerReading.test(said) ? lowerStart : 0) +
    (longLength.test(said) ? longStart : 0) +
    (oddDistance.test(said) ? oddStart : 0)
  )
}
