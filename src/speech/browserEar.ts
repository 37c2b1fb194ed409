/** The browser's own recogniser as this browser has it, with what it failed of in an earlier visit. */
import { type BrowserListenerOptions, createBrowserListener } from "./browserListener"
import type { Listener } from "./Listener"
import { findOnDevice, type OnDeviceCalls } from "./onDevicePack"
import type { Recognition } from "./recognitionSession"

type RecogniserClass = (new () => Recognition) & OnDeviceCalls

const englishes = ["en-GB", "en-US"]

const found = globalThis as {
  SpeechRecognition?: RecogniserClass
  webkitSpeechRecognition?: RecogniserClass
  SpeechRecognitionPhrase?: new (phrase: string, boost?: number) => unknown
}
const recogniser = (): RecogniserClass | undefined => found.SpeechRecognition ?? found.webkitSpeechRecognition

/** Fetches the language pack for recognition on the device, where there is none yet; false where it cannot be had. */
export const fetchOnDevice = async (): Promise<boolean> => {
  const calls = recogniser()
  return calls !== undefined && (await findOnDevice(calls, englishes)) !== null
}

/** `deviceOnly`: the sound never leaves the device; where that cannot be had the fallback listens. */
export const createBrowserEar = (
  options: Pick<BrowserListenerOptions, "fallback" | "remembered" | "remember" | "using"> & { deviceOnly: boolean },
): Listener => {
  const calls = recogniser()
  const { SpeechRecognitionPhrase } = found
  return createBrowserListener({
    ...options,
    make: calls ? () => new calls() : null,
    langs: englishes,
    ...(calls?.available && { onDevice: calls }),
    ...(SpeechRecognitionPhrase && { makePhrase: (phrase: string) => new SpeechRecognitionPhrase(phrase) }),
  })
}
