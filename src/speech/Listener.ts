/**
 * Words out of sound. Knows no facts, no rules and no screen. The half-duplex rule lives here: while deaf, nothing is
 * handed over, but the sound of the last moments is kept so that the first word after is not lost.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Heard } from "../facts/Heard"
import type { Outcome } from "../facts/Outcome"
import type { Fit } from "./measureFit"

/** What the ear is doing, for the screen: waiting for the microphone, listening, hearing speech, deaf, stopped. */
export type EarState = "starting" | "listening" | "speech" | "deaf" | "stopped"

export interface UtteranceSound {
  /** One channel, -1 to 1. */
  samples: Float32Array
  rateHz: number
  /** Where the first sample stands, in seconds on the clock of the utterance's words. */
  from: number
}

export interface ListenerEvents {
  /** Each finished utterance once, in order. */
  heard(heard: Heard): void
  /** The sound that the utterance came from, just before it is handed over; only from ears that have it. */
  sound?(heardId: string, sound: UtteranceSound): void
  /** How well the utterance fits its words, just before it is handed over; only from the offline ear. */
  fit?(heardId: string, fit: Fit): void
  state?(state: EarState): void
  /** Sound level 0 to 1, a few times a second. */
  level?(level: number): void
  /** Something stopped the ear; the words are fit to be spoken. */
  failed?(because: string): void
  /** Something may have been missed, and the ear goes on; the words are fit to be spoken. */
  stumbled?(because: string): void
}

export interface Listener {
  /** Loads what it needs and takes the grammar. If it refuses, nothing is heard: an old grammar would answer in its own terms. */
  prepare(grammar: EarGrammar): Promise<Outcome>
  start(events: ListenerEvents): Promise<Outcome>
  /** Deaf from now until `undeafen`, and for `marginMs` after that. */
  deafen(): void
  undeafen(marginMs: number): void
  /** Nothing is handed over once it resolves. */
  stop(): Promise<void>
  /** Gives the microphone and the memory back for good. */
  release(): Promise<void>
}
