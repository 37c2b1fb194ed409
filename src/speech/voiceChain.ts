/**
 * Several voices as one, the best first. A sentence goes to the first that is ready; when that one fails on it, the next
 * says it, and the failed one is left alone until the next tap.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { Voice } from "./Voice"

export const createVoiceChain = (voices: readonly Voice[]): Voice => {
  /** Voices whose `prepare` was answered since the last tap, and those that failed since. */
  const asked = new Set<Voice>()
  const failed = new Set<Voice>()

  const current = () => voices.find((voice) => !failed.has(voice) && voice.isReady())

  /** Those that can speak now, then those that nobody has asked yet. */
  const inOrder = () => {
    const usable = voices.filter((voice) => !failed.has(voice))
    const ready = usable.filter((voice) => voice.isReady())
    return [...ready, ...usable.filter((voice) => !ready.includes(voice) && !asked.has(voice))]
  }

  const speakWith = async (voice: Voice, words: string, signal: AbortSignal): Promise<Outcome> => {
    const prepared = voice.isReady() ? done(undefined) : await voice.prepare()
    asked.add(voice)
    return prepared.ok ? voice.speak(words, signal) : prepared
  }

  return {
    get name() {
      return current()?.name ?? "no voice"
    },
    isReady: () => current() !== undefined,
    prepare: async () => {
      asked.clear()
      failed.clear()
      const reasons: string[] = []
      for (const voice of voices) {
        const outcome = await voice.prepare()
        asked.add(voice)
        if (outcome.ok) return outcome
        reasons.push(outcome.because)
      }
      return refuse(reasons.at(0) ?? "There is no voice.")
    },
    speak: async (words, signal) => {
      let because = "Nothing can speak here: read the screen."
      for (const voice of inOrder()) {
        const outcome = await speakWith(voice, words, signal)
        if (outcome.ok || signal.aborted) return outcome
        failed.add(voice)
        because = outcome.because
      }
      return refuse(because)
    },
    release: async () => {
      for (const voice of voices) await voice.release()
    },
  }
}
