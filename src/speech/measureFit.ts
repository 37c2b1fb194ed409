/**
 * How well an answer fits its sound, beside free phones over the same sound. The worst word counts, not the mean: one word
 * that was never said hides easily among four that were.
 */
import type { Decoded, Segment } from "./decode"
import { type Behind, nothingBehind } from "./noiseAdapter"
import { isNumber } from "./numberWords"

export interface Fit {
  /** Nats a frame by which the worst word falls short of free phones. Nought or above is a perfect fit. */
  worstWord: number
  /** Nats a frame of the whole path; how good the best sound of all would be is nought. */
  whole: number
  /** Nats by which what was taken for silence would be better told as speech: words that the grammar lacks hide there. */
  hidden: number
  /** Length of the shortest number word in seconds, or null where there is none. */
  shortestNumber: number | null
  /** How much noise stood behind it, from 0 (none to speak of) to 1. */
  noise: number
  /** Whether that noise wavered, as the talk of others does. */
  wavers: boolean
  /** Whether it is the first that was heard of the voice. */
  isNewVoice?: boolean
}

/** Words shorter than this, in frames, are measured as if they were as long: a single frame proves nothing. */
const leastFrames = 8
/** Decibels above the noise from which there is none to speak of, and below which there is no more than full noise. */
const [clearFrom, fullBelow] = [45, 20]

export const measureFit = (answer: Decoded, free: Decoded, behind: Behind = nothingBehind): Fit => {
  const freeNats = spread(free.segments)
  const short = ({ from, frames, nats }: Segment) => nats - sumOver(freeNats, from, from + frames)
  const words = answer.segments.filter((segment) => segment.isWord)
  const rest = answer.segments.filter((segment) => !segment.isWord)
  const numbers = words.filter((word) => isNumber(word.text)).map((word) => word.frames / 100)
  const frames = answer.segments.reduce((sum, segment) => sum + segment.frames, 0)
  return {
    worstWord: Math.min(...words.map((word) => short(word) / Math.max(word.frames, leastFrames))),
    whole: answer.nats / Math.max(1, frames),
    hidden: Math.max(0, ...rest.map((silence) => -short(silence))),
    shortestNumber: numbers.length > 0 ? Math.min(...numbers) : null,
    noise: noiseOf(behind),
    wavers: behind.wavers,
    isNewVoice: behind.isNewVoice,
  }
}

/** How much noise that is, from 0 (none to speak of) to 1. */
export const noiseOf = ({ snrDb }: Behind): number =>
  Math.min(1, Math.max(0, (clearFrom - snrDb) / (clearFrom - fullBelow)))

/** Nats of each frame, those of a stretch being spread evenly over it. */
const spread = (segments: readonly Segment[]): number[] => {
  const each: number[] = []
  for (const { from, frames, nats } of segments)
    for (let at = Math.max(0, from); at < from + frames; at++) each[at] = nats / frames
  return each
}

const sumOver = (each: readonly number[], from: number, to: number) => {
  let sum = 0
  for (let at = Math.max(0, from); at < to; at++) sum += each[at] ?? 0
  return sum
}
