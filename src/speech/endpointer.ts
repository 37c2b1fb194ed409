/**
 * Finds where an utterance starts and ends in a stream of sound. The level of the background is followed as the lowest
 * level of the last seconds, so a humming meter becomes background by itself and is never waited for; a slow speaker
 * ("nought … point … nought five") is not cut, since only a long quiet spell ends an utterance.
 */
import { joinSamples } from "./joinSamples"
import { createLevelTracker } from "./levelTracker"
import { createSpeechBand } from "./speechBand"

/** How an utterance begins and ends; all in seconds unless the name says otherwise. */
export interface EndpointerSettings {
  /** Kept before the first loud frame: soft consonants come before the vowel. */
  preRoll: number
  /** Quiet after which `atPause` is asked; it must be longer than `postRoll`, so that it is shown the final sound. */
  pause: number
  /** Quiet that ends an utterance where nobody says otherwise. */
  hangover: number
  /** Kept of that quiet. */
  postRoll: number
  /** Loud time within `onsetWindow` that starts one: a click is shorter. */
  onset: number
  onsetWindow: number
  /** No utterance is longer: one that stays open makes the recogniser's memory grow. */
  longest: number
  /** How far above the background speech must be, in decibels: to begin, and to go on. */
  startDb: number
  stayDb: number
}

export const endpointerSettings: EndpointerSettings = {
  preRoll: 0.3,
  pause: 0.45,
  hangover: 0.9,
  postRoll: 0.4,
  onset: 0.08,
  onsetWindow: 0.15,
  longest: 30,
  startDb: 6,
  stayDb: 5,
}

/** One stretch of sound that may hold words. Times are seconds from the first sample ever pushed. */
export interface Utterance {
  start: number
  end: number
  samples: Float32Array
  /** The surroundings right before it, as far back as they were heard without the app's own voice. */
  before: Float32Array
  /** Whether it was cut because it had grown too long. */
  capped: boolean
}

export interface Endpointer {
  /** Takes the next samples and gives the utterances that they finished. The app's own voice is not to be `learnt` from. */
  push(samples: Float32Array, learnt?: boolean): Utterance[]
  /** Ends the sound: what is open is finished. */
  flush(): Utterance[]
  /** Forgets an open utterance and all sound before now; the level of the background is kept. */
  forget(): void
  readonly inSpeech: boolean
  /** Where the open utterance began, if there is one. */
  readonly openSince: number | null
  /** Seconds pushed so far. */
  readonly now: number
  /** Level of the last frame in decibels, full scale being 0. */
  readonly levelDb: number
}

/** Told what would be the utterance if it ended here; answers how much quiet, in seconds, should end it. */
export type AtPause = (utterance: Utterance) => number

/** So much of the surroundings is kept from before an utterance, in seconds. */
const beforeSeconds = 1.5

/** Frames are 10 ms. */
export const createEndpointer = (
  rateHz: number,
  atPause: AtPause = () => endpointerSettings.hangover,
  settings: EndpointerSettings = endpointerSettings,
): Endpointer => {
  const frameLength = Math.round(rateHz / 100)
  const frames = (seconds: number) => Math.round(seconds * 100)
  const tracker = createLevelTracker()
  const speechBand = createSpeechBand(rateHz)
  const recentlyLoud: boolean[] = []
  let pending = new Float32Array(0)
  /** Frames since the open utterance began, or the last few while there is none. */
  let kept: Float32Array[] = []
  let before: Float32Array[] = []
  let counted = 0
  let open = false
  let quiet = 0
  let hangover = settings.hangover

  const begin = () => {
    open = true
    quiet = 0
  }

  const surplus = (capped: boolean) => (capped ? 0 : Math.max(0, quiet - frames(settings.postRoll)))

  const look = (capped: boolean): Utterance => {
    const used = kept.slice(0, kept.length - surplus(capped))
    const start = (counted - kept.length) / 100
    return { start, end: start + used.length / 100, samples: joinSamples(used), before: joinSamples(before), capped }
  }

  const finish = (capped: boolean): Utterance => {
    const utterance = look(capped)
    kept = capped ? [] : kept.slice(kept.length - surplus(capped))
    open = false
    before = []
    recentlyLoud.length = 0
    return utterance
  }

  const goOn = (above: number): Utterance | null => {
    quiet = above > settings.stayDb ? 0 : quiet + 1
    if (quiet === frames(settings.pause)) hangover = atPause(look(false))
    if (quiet > frames(settings.pause) && quiet >= frames(hangover)) return finish(false)
    return kept.length >= frames(settings.longest) ? finish(true) : null
  }

  const watch = (above: number) => {
    recentlyLoud.push(above > settings.startDb)
    if (recentlyLoud.length > frames(settings.onsetWindow)) recentlyLoud.shift()
    if (recentlyLoud.filter(Boolean).length >= frames(settings.onset)) begin()
    const spare = kept.length - frames(settings.preRoll + settings.onsetWindow)
    if (spare > 0) before.push(...kept.splice(0, spare))
    if (before.length > frames(beforeSeconds)) before.splice(0, before.length - frames(beforeSeconds))
  }

  const takeFrame = (frame: Float32Array, learnt: boolean): Utterance | null => {
    counted++
    kept.push(frame)
    const above = tracker.follow(speechBand(frame), learnt)
    if (!learnt) before = []
    if (open) return goOn(above)
    watch(above)
    return null
  }

  return {
    push: (samples, learnt = true) => {
      const all = joinSamples([pending, samples])
      const found: Utterance[] = []
      let at = 0
      for (; at + frameLength <= all.length; at += frameLength) {
        const one = takeFrame(all.slice(at, at + frameLength), learnt)
        if (one) found.push(one)
      }
      pending = all.slice(at)
      return found
    },
    flush: () => (open ? [finish(false)] : []),
    forget: () => {
      open = false
      quiet = 0
      kept = []
      before = []
      recentlyLoud.length = 0
    },
    get inSpeech() {
      return open
    },
    get openSince() {
      return open ? (counted - kept.length) / 100 : null
    },
    get now() {
      return counted / 100
    },
    get levelDb() {
      return tracker.levelDb
    },
  }
}
