/**
 * A whole recording through the offline ear, on the command line and in the office alike: what is heard depends on the
 * sound alone, not on where it is heard.
 */
import { v7 } from "uuid"
import type { Heard } from "../facts/Heard"
import { done, type Outcome } from "../facts/Outcome"
import { createEarStream, type HeardSound, type UtteranceEar } from "./earStream"
import type { UtteranceSound } from "./Listener"
import { readWav, type Sound } from "./readWav"

export interface HearingOptions {
  newId?: () => string
  /** Is told how far it is, in seconds of sound. */
  told?: (seconds: number) => void
  /** Is given the sound of each utterance, at the ear's rate. */
  sound?: (heardId: string, sound: UtteranceSound) => void
}

/** Everything that a recording says, in order. The grammar must have been taken before. */
export const hearSound = (sound: Sound, ear: UtteranceEar, options: HearingOptions = {}): Heard[] => {
  const { newId = () => v7(), told, sound: give } = options
  const { samples, rateHz } = sound
  const stream = createEarStream(ear, newId)
  const heards: Heard[] = []
  const take = (found: readonly HeardSound[]) => {
    for (const one of found) {
      give?.(one.heard.id, one.sound)
      heards.push(one.heard)
    }
  }
  // Second by second, so that an hour of sound does not need several hours' worth of memory.
  for (let at = 0; at < samples.length; at += rateHz) {
    take(stream.push(samples.subarray(at, at + rateHz), rateHz))
    told?.(Math.min(at + rateHz, samples.length) / rateHz)
  }
  take(stream.finish())
  return heards
}

/** The same, of the bytes of a WAV file; refuses what is none. */
export const hearWav = (bytes: Uint8Array, ear: UtteranceEar, options?: HearingOptions): Outcome<Heard[]> => {
  const sound = readWav(bytes)
  return sound.ok ? done(hearSound(sound.value, ear, options)) : sound
}
