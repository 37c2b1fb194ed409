/**
 * The browser's own voice. Nothing it reports can be relied on: the list of voices comes late or with no event, `end`
 * may never come, and an utterance that nothing else holds is collected together with its events (Chrome). So every
 * wait has an end of its own, and only what was seen to start counts as spoken.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { pickVoice } from "./pickVoice"
import { splitSpeech } from "./splitSpeech"
import { cutShort, type Voice } from "./Voice"
import { usualVoiceSettings, type VoiceSettings } from "./VoiceSettings"

export interface BrowserVoiceOptions {
  /** Absent where the browser has none. */
  synthesis: SpeechSynthesis | undefined
  makeUtterance?: (words: string) => SpeechSynthesisUtterance
  settings?: () => VoiceSettings
  /** The last resort: speaks although no English voice is listed, as long as none listed would send the words away. */
  unlisted?: boolean
}

const language = "en-GB"
/** When the list is looked at again, in ms after the first look; after the last one it goes on without. */
const looksMs = [100, 250, 500, 800, 1000]
/** A voice that has not started by then will not: a cold one on a slow phone takes two to three seconds. */
const startMs = 4000
/** Twice as long as anybody speaks: at 14 characters a second one takes 70 ms. */
const [endMs, characterMs] = [2000, 140]
/** Cancelling and speaking at once loses the new utterance in some browsers. */
const settleMs = 60

export const createBrowserVoice = (options: BrowserVoiceOptions): Voice => {
  const { synthesis, unlisted = false } = options
  const settings = options.settings ?? (() => usualVoiceSettings)
  const makeUtterance = options.makeUtterance ?? ((words: string) => new SpeechSynthesisUtterance(words))
  /** Keeps what is spoken from being collected. */
  let held: SpeechSynthesisUtterance | null = null
  let woken = false

  const listed = () => synthesis?.getVoices() ?? []
  const best = () => pickVoice(listed(), settings().remoteVoices)
  const isReady = () => {
    if (!synthesis) return false
    return unlisted ? woken && listed().every((voice) => voice.localService) : best() !== null
  }
  // Asking once makes the browser start to fill its list.
  listed()

  const sayPiece = async (words: string, signal: AbortSignal): Promise<Outcome> => {
    if (!synthesis) return refuse("This browser cannot speak.")
    await freeQueue(synthesis)
    if (signal.aborted) return refuse(cutShort)
    const utterance = makeUtterance(words)
    utterance.lang = language
    utterance.voice = best()
    utterance.rate = settings().rate
    utterance.volume = settings().volume
    held = utterance
    const outcome = await speakThrough(synthesis, utterance, signal)
    held = null
    return outcome
  }

  return {
    get name() {
      return best()?.name ?? "the browser's voice"
    },
    isReady,
    prepare: async () => {
      if (!synthesis) return refuse("This browser cannot speak.")
      if (!woken) unlock(synthesis, makeUtterance(" "))
      woken = true
      if (!isReady()) await waitForVoices(synthesis, isReady)
      if (isReady()) return done(undefined)
      const remote = listed().some((voice) => !voice.localService)
      return refuse(remote ? "The only voices here would send the words away." : "This browser has no English voice.")
    },
    speak: async (words, signal) => {
      for (const piece of splitSpeech(words)) {
        const outcome = await sayPiece(piece, signal)
        if (!outcome.ok) return outcome
      }
      return done(undefined)
    },
    release: async () => {
      if (held) synthesis?.cancel()
    },
  }
}

const pause = (waitMs: number) => new Promise<void>((resolve) => setTimeout(resolve, waitMs))

/** An empty utterance from the tap: without it iPhones stay silent. */
const unlock = (synthesis: SpeechSynthesis, blank: SpeechSynthesisUtterance): void => {
  blank.volume = 0
  blank.lang = language
  synthesis.speak(blank)
}

/** What still hangs in the browser's queue is not ours: it would hold the next sentence up for ever. */
const freeQueue = async (synthesis: SpeechSynthesis): Promise<void> => {
  if (synthesis.paused) synthesis.resume()
  if (!synthesis.speaking && !synthesis.pending) return
  synthesis.cancel()
  await pause(settleMs)
}

/** Looks at the list on the browser's event and by the clock, for Safari was seen not to send the event. */
const waitForVoices = (synthesis: SpeechSynthesis, isThere: () => boolean): Promise<void> =>
  new Promise((resolve) => {
    const finish = () => {
      for (const timer of timers) clearTimeout(timer)
      synthesis.removeEventListener?.("voiceschanged", look)
      resolve()
    }
    const look = () => {
      if (isThere()) finish()
    }
    const timers = looksMs.map((waitMs) => setTimeout(waitMs === looksMs.at(-1) ? finish : look, waitMs))
    synthesis.addEventListener?.("voiceschanged", look)
  })

const refusals: Readonly<Record<string, string>> = {
  "not-allowed": "The browser speaks only after a tap.",
  interrupted: cutShort,
  canceled: cutShort,
}

const speakThrough = (
  synthesis: SpeechSynthesis,
  utterance: SpeechSynthesisUtterance,
  signal: AbortSignal,
): Promise<Outcome> =>
  new Promise((resolve) => {
    let started = false
    const finish = (outcome: Outcome) => {
      clearTimeout(timer)
      signal.removeEventListener("abort", cut)
      utterance.onstart = utterance.onend = utterance.onerror = utterance.onboundary = null
      resolve(outcome)
    }
    const giveUp = () => {
      synthesis.cancel()
      finish(started ? done(undefined) : refuse("The browser's voice did not start."))
    }
    const cut = () => {
      synthesis.cancel()
      setTimeout(() => finish(refuse(cutShort)), settleMs)
    }
    let timer = setTimeout(giveUp, startMs)
    utterance.onstart = utterance.onboundary = () => {
      if (started) return
      started = true
      clearTimeout(timer)
      timer = setTimeout(giveUp, endMs + (utterance.text.length * characterMs) / utterance.rate)
    }
    utterance.onend = () => finish(done(undefined))
    utterance.onerror = ({ error }) => finish(refuse(refusals[error] ?? "The browser's voice failed."))
    signal.addEventListener("abort", cut)
    synthesis.speak(utterance)
  })
