/**
 * A speaker out of several voices, the best first. A sentence goes to the first that is ready; when that one fails on
 * it, the next says it, and the failed one is left alone until the next tap. Sounds wait their turn among the sentences.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { AudioOut } from "./audioOut"
import type { Speaker } from "./Speaker"
import { renderSound } from "./sounds"
import { createSpeakingTurns } from "./speakingTurns"
import type { Voice } from "./Voice"
import { usualVoiceSettings, type VoiceSettings } from "./VoiceSettings"

export interface ChosenSpeaker extends Speaker {
  /** The voice that would speak now, in a word or two; null where none can and only the screen shows the words. */
  voiceName(): string | null
}

export interface SpeakerParts {
  voices: readonly Voice[]
  audio: AudioOut
  settings?: () => VoiceSettings
}

const soundRateHz = 24_000
const notWoken = "The voice has to be woken by a tap first."

export const createSpeaker = ({ voices, audio, settings = () => usualVoiceSettings }: SpeakerParts): ChosenSpeaker => {
  const turns = createSpeakingTurns()
  /** Voices whose `prepare` was answered since the last tap, and those that failed since. */
  const asked = new Set<Voice>()
  const failed = new Set<Voice>()
  let state: "asleep" | "awake" | "released" = "asleep"

  const prepareFirst = async (): Promise<Outcome> => {
    const reasons: string[] = []
    for (const voice of voices) {
      const outcome = await voice.prepare()
      asked.add(voice)
      if (outcome.ok) return outcome
      reasons.push(outcome.because)
    }
    return refuse(reasons.at(0) ?? "There is no voice.")
  }

  /** Those that can speak now, then those that nobody has asked yet. */
  const inOrder = () => {
    const usable = voices.filter((voice) => !failed.has(voice))
    const ready = usable.filter((voice) => voice.isReady())
    return [...ready, ...usable.filter((voice) => !ready.includes(voice) && !asked.has(voice))]
  }

  const speak = async (words: string, signal: AbortSignal): Promise<Outcome> => {
    if (words.trim() === "") return done(undefined)
    if (state !== "awake") return refuse(notWoken)
    let because = "Nothing can speak here: read the screen."
    for (const voice of inOrder()) {
      const prepared = voice.isReady() ? done(undefined) : await voice.prepare()
      asked.add(voice)
      const outcome = prepared.ok ? await voice.speak(words, signal) : prepared
      if (outcome.ok || signal.aborted) return outcome
      failed.add(voice)
      because = outcome.because
    }
    return refuse(because)
  }

  return {
    prepare: async () => {
      if (state === "released") return refuse("The voice was put away.")
      state = "awake"
      asked.clear()
      failed.clear()
      // Both are called before anything is waited for, because a tap counts no longer than that.
      const [, outcome] = await Promise.all([audio.wake(), prepareFirst()])
      return outcome
    },
    say: (words) => turns.add((signal) => speak(words, signal)),
    sound: async (sound) => {
      await turns.add((signal) =>
        audio.play(
          { samples: renderSound(sound, soundRateHz), rateHz: soundRateHz, volume: settings().volume },
          signal,
        ),
      )
    },
    hush: () => turns.hush(),
    release: async () => {
      state = "released"
      turns.hush()
      for (const voice of voices) await voice.release()
      await audio.release()
    },
    voiceName: () =>
      state === "awake" ? (voices.find((voice) => !failed.has(voice) && voice.isReady())?.name ?? null) : null,
  }
}
