/** A speaker out of voices and a loudspeaker: sentences and sounds wait for one another, and nothing sounds before a tap. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { AudioOut } from "./audioOut"
import type { Speaker } from "./Speaker"
import { renderSound } from "./sounds"
import { createSpeakingTurns } from "./speakingTurns"
import type { Voice } from "./Voice"
import { usualVoiceSettings, type VoiceSettings } from "./VoiceSettings"
import { createVoiceChain } from "./voiceChain"

export interface ChosenSpeaker extends Speaker {
  /** The voice that would speak now, in a word or two; null where none can and only the screen shows the words. */
  voiceName(): string | null
}

export interface SpeakerParts {
  /** The best first. */
  voices: readonly Voice[]
  audio: AudioOut
  settings?: () => VoiceSettings
}

const rateHz = 24_000

export const createSpeaker = ({ voices, audio, settings = () => usualVoiceSettings }: SpeakerParts): ChosenSpeaker => {
  const turns = createSpeakingTurns()
  const voice = createVoiceChain(voices)
  let state: "asleep" | "awake" | "released" = "asleep"

  const speak = async (words: string, signal: AbortSignal): Promise<Outcome> => {
    if (words.trim() === "") return done(undefined)
    if (state !== "awake") return refuse("The voice has to be woken by a tap first.")
    return voice.speak(words, signal)
  }

  return {
    prepare: async () => {
      if (state === "released") return refuse("The voice was put away.")
      state = "awake"
      // Both are called before anything is waited for, because a tap counts no longer than that.
      const [, outcome] = await Promise.all([audio.wake(), voice.prepare()])
      return outcome
    },
    say: (words) => turns.add((signal) => speak(words, signal)),
    sound: async (sound) => {
      const { volume } = settings()
      await turns.add((signal) => audio.play({ samples: renderSound(sound, rateHz), rateHz, volume }, signal))
    },
    hush: () => turns.hush(),
    release: async () => {
      state = "released"
      turns.hush()
      await voice.release()
      await audio.release()
    },
    voiceName: () => (state === "awake" && voice.isReady() ? voice.name : null),
  }
}
