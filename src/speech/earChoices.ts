/**
 * Which ears this browser offers, each with the one plain sentence on where the sound goes. The offline ear is always the
 * first and is used until the worker chooses another.
 */

export interface EarChoice {
  id: "offline" | "browser"
  name: string
  /** Where the sound goes, in a sentence for the settings. */
  about: string
  /** Whether it can be chosen here at all. */
  isThere: boolean
}

/** The names under which browsers have their recogniser. */
export type RecogniserGlobals = { SpeechRecognition?: unknown; webkitSpeechRecognition?: unknown }

export const earChoices = (globals: RecogniserGlobals = globalThis as RecogniserGlobals): EarChoice[] => [
  {
    id: "offline",
    name: "Offline ear",
    about: "No sound leaves this device.",
    isThere: true,
  },
  {
    id: "browser",
    name: "The browser's own recogniser",
    about: "Unless your browser can do it on the device, it sends the sound to its maker's servers.",
    isThere: "SpeechRecognition" in globals || "webkitSpeechRecognition" in globals,
  },
]
