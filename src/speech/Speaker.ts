/** The voice. Speaks one sentence at a time, in the order given, and never waits for an `end` that does not come. */
import type { Outcome } from "../facts/Outcome"

/** Four short sounds that can be told apart without words. */
export type Sound = "listening" | "gotIt" | "sayAgain" | "warning"

export interface Speaker {
  /** Called from a tap: wakes the sound output and finds a voice. Refuses, saying why, when nothing can speak. */
  prepare(): Promise<Outcome>
  /** Resolves when the sentence has ended, or when the watchdog gave up on its end. */
  say(words: string): Promise<Outcome>
  sound(sound: Sound): Promise<void>
  /** Stops what is being said and drops what waits. */
  hush(): void
  release(): Promise<void>
}
