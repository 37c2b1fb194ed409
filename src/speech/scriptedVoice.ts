/** A speaker for tests and for the command line: says nothing aloud and keeps what it was asked to say, in order. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { Sound, Speaker } from "./Speaker"
import { createSpeakingTurns } from "./speakingTurns"

export type Spoken = { at: number; words: string } | { at: number; sound: Sound }

export interface ScriptedVoice extends Speaker {
  /** What was begun, oldest first, with the clock's time. */
  readonly spoken: readonly Spoken[]
}

export interface VoiceScript {
  now: () => number
  /** How long a sentence or a sound takes; at once by default. */
  lengthMs?: (what: string) => number
  /** Why nothing can speak, for a device without a voice. */
  mute?: () => string | null
}

export const createScriptedVoice = ({ now, lengthMs = () => 0, mute = () => null }: VoiceScript): ScriptedVoice => {
  const turns = createSpeakingTurns()
  const spoken: Spoken[] = []
  let state: "asleep" | "awake" | "released" = "asleep"

  const take = (what: string, signal: AbortSignal): Promise<Outcome> =>
    lengthMs(what) === 0 ? Promise.resolve(done(undefined)) : wait(lengthMs(what), signal)

  return {
    spoken,
    prepare: async () => {
      const because = mute() ?? (state === "released" ? "The voice was put away." : null)
      if (because !== null) return refuse(because)
      state = "awake"
      return done(undefined)
    },
    say: (words) =>
      turns.add(async (signal) => {
        if (words.trim() === "") return done(undefined)
        if (state !== "awake") return refuse("The voice has to be woken by a tap first.")
        spoken.push({ at: now(), words })
        return take(words, signal)
      }),
    sound: async (sound) => {
      await turns.add(async (signal) => {
        if (state !== "awake") return refuse("The sound has to be woken by a tap first.")
        spoken.push({ at: now(), sound })
        return take(sound, signal)
      })
    },
    hush: () => turns.hush(),
    release: async () => {
      state = "released"
      turns.hush()
    },
  }
}

const wait = (waitMs: number, signal: AbortSignal): Promise<Outcome> =>
  new Promise((resolve) => {
    const timer = setTimeout(() => resolve(done(undefined)), waitMs)
    signal.addEventListener("abort", () => {
      clearTimeout(timer)
      resolve(refuse("It was cut short."))
    })
  })
