/** A voice whose code is fetched when it is first wanted: most browsers have a voice of their own, and never ask for it. */
import { refuse } from "../facts/Outcome"
import type { Voice } from "./Voice"

/** `load` is tried again at the next tap where it failed. */
export const createLaterVoice = (name: string, load: () => Promise<Voice>): Voice => {
  let voice: Voice | null = null
  return {
    name,
    prepare: async () => {
      try {
        voice ??= await load()
      } catch {
        return refuse("The built-in voice could not be loaded.")
      }
      return voice.prepare()
    },
    isReady: () => voice?.isReady() ?? false,
    speak: async (words, signal) => voice?.speak(words, signal) ?? refuse("The built-in voice is not here yet."),
    release: async () => voice?.release(),
  }
}
