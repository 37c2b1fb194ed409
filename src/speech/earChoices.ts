/**
 * Which ears this browser offers, each with the one plain sentence on where the sound goes. The offline ear is always the
 * first and is used until the worker chooses another.
 */

import type { EarId } from "./EarId"

export interface EarChoice {
  id: EarId
  name: string
  /** Where the sound goes, in a sentence for the settings. */
  about: string
  /** Whether it can be chosen here at all. */
  isThere: boolean
  /** Why not, where it cannot. */
  missing: string
}

/** The names under which browsers have their recogniser. */
export type RecogniserGlobals = { SpeechRecognition?: unknown; webkitSpeechRecognition?: unknown }

export const earChoices = (globals: RecogniserGlobals = globalThis as RecogniserGlobals): EarChoice[] => {
  const recogniser = globals.SpeechRecognition ?? globals.webkitSpeechRecognition
  return [
    {
      id: "offline",
      name: "Offline ear",
      about: "No sound leaves this device.",
      isThere: true,
      missing: "",
    },
    {
      id: "browser",
      name: "The browser’s own recogniser",
      about: "Unless your browser can do it on the device, it sends the sound to its maker’s servers.",
      isThere: recogniser !== undefined,
      missing: "This browser has none.",
    },
    {
      id: "device",
      name: "The browser’s own recogniser, on this device only",
      about: "No sound leaves this device. Its language pack may have to be fetched first.",
      isThere: typeof (recogniser as { available?: unknown } | undefined)?.available === "function",
      missing: "This browser cannot promise that.",
    },
  ]
}
