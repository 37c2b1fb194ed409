/**
 * One way of speaking, as `createSpeaker` uses it. It is given one sentence at a time; the queue, the sounds and what to
 * do when it fails are not its business.
 */
import type { Outcome } from "../facts/Outcome"

export interface Voice {
  /** In a word or two, for the foot of the page. */
  readonly name: string
  /** Called from a tap; what needs the tap happens before the first wait. May be called again. */
  prepare(): Promise<Outcome>
  /** Whether it could speak right now. It may become ready by itself, as lists of voices arrive late. */
  isReady(): boolean
  /** Resolves when the sentence has ended, and soon after `signal` aborts. Refuses when it was not spoken whole. */
  speak(words: string, signal: AbortSignal): Promise<Outcome>
  release(): Promise<void>
}

/** Why a sentence that was hushed counts as not spoken. */
export const cutShort = "It was cut short."
