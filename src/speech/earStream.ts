/**
 * A stream of sound in, finished utterances out: rate, filter, endpoints, recogniser, and the half-duplex rule. Knows no
 * microphone and no clock: all times are places in the sound, so a file and a live stream go the same way.
 */
import type { Heard } from "../facts/Heard"
import { createEndpointer, type Endpointer, endpointerSettings, type Utterance } from "./endpointer"
import { createHighPass } from "./highPass"
import type { UtteranceSound } from "./Listener"
import type { Fit } from "./measureFit"
import { isNumberWord } from "./numberWords"
import type { Hearing } from "./recogniser"
import { createResampler } from "./resampler"

/** The part of the recogniser that the stream needs. */
export interface UtteranceEar {
  rateHz: number
  /** `before` is the sound right before it, in which nobody spoke to the app. */
  hear(samples: Float32Array, before?: Float32Array): Hearing | null
  /** A new stream begins, or its microphone is another: what the ear learnt of voice and room is forgotten. */
  startAnew?(): void
}

/** One finished utterance and the very sound it came from. */
export interface HeardSound {
  heard: Heard
  sound: UtteranceSound
  /** How well it fits, where the ear measures that. */
  fit: Fit | null
}

export interface EarStream {
  /** Takes the next samples, at the rate they have. A change of rate starts a new utterance. */
  push(samples: Float32Array, rateHz: number): HeardSound[]
  /** The sound has ended: what is open is finished. */
  finish(): HeardSound[]
  /** From here on the app speaks: an open utterance is thrown away. */
  deafen(): void
  /**
   * The app has gone quiet. What lies wholly within the next `marginMs` is its echo and is thrown away; an utterance that
   * began there and goes on is kept from its first sound.
   */
  undeafen(marginMs: number): void
  readonly deaf: boolean
  readonly inSpeech: boolean
  /** 0 to 1. */
  readonly level: number
}

/** Levels that are shown as 0 and 1, in decibels of full scale. */
const [quietDb, loudDb] = [-60, -10]

/**
 * Quiet that ends an utterance, in seconds, by what it would say if it ended there. A plain answer that does not end in a
 * number can hardly go on; where nothing of the grammar was said yet, it may be half of a sentence.
 */
const quietAfter = { wholeSentence: 0.55, number: endpointerSettings.hangover, nothingYet: 1.3 }

/**
 * Longer talk than this is no sentence of the product, in seconds, and is not decoded: a radio would keep a phone busy
 * without end. What is shorter than the other figure is decoded at each pause already.
 */
const [longestSentence, longestAtPause] = [15, 9]

export const createEarStream = (ear: UtteranceEar, newId: () => string): EarStream => {
  // What was heard at a pause is the answer if the utterance does end there, so that nobody waits for it twice.
  let atPause: { start: number; end: number; hearing: Hearing | null } | null = null
  const endpointer: Endpointer = createEndpointer(ear.rateHz, (utterance) => {
    if (deaf || utterance.end - utterance.start > longestAtPause) return quietAfter.number
    const hearing = ear.hear(utterance.samples, utterance.before)
    atPause = { start: utterance.start, end: utterance.end, hearing }
    if (!hearing) return quietAfter.nothingYet
    const last = hearing.words.at(-1)?.text ?? ""
    return hearing.margin < 1 || isNumberWord(last) ? quietAfter.number : quietAfter.wholeSentence
  })
  let rate = 0
  let toEar = (samples: Float32Array) => samples
  let deaf = false
  let audibleFrom = 0

  const setRate = (rateHz: number) => {
    rate = rateHz
    ear.startAnew?.()
    const [resampler, highPass] = [createResampler(rateHz, ear.rateHz), createHighPass(ear.rateHz)]
    toEar = (samples) => highPass(resampler.push(samples))
    endpointer.forget()
  }

  const hear = (utterance: Utterance): HeardSound[] => {
    const spokenEnd = utterance.end - endpointerSettings.postRoll
    if (deaf || spokenEnd <= audibleFrom || utterance.end - utterance.start > longestSentence) return []
    const known = atPause?.start === utterance.start && atPause.end === utterance.end
    const hearing = known && atPause ? atPause.hearing : ear.hear(utterance.samples, utterance.before)
    if (!hearing) return []
    const sound = { samples: utterance.samples, rateHz: ear.rateHz, from: utterance.start }
    return [{ heard: toHeard(hearing, utterance, newId()), sound, fit: hearing.fit ?? null }]
  }

  return {
    push: (samples, rateHz) => {
      if (rateHz !== rate) setRate(rateHz)
      return endpointer.push(toEar(samples), !deaf).flatMap(hear)
    },
    finish: () => endpointer.flush().flatMap(hear),
    deafen: () => {
      deaf = true
    },
    undeafen: (marginMs) => {
      deaf = false
      endpointer.forget()
      audibleFrom = endpointer.now + marginMs / 1000
    },
    get deaf() {
      return deaf
    },
    get inSpeech() {
      return !deaf && endpointer.inSpeech
    },
    get level() {
      return Math.min(1, Math.max(0, (endpointer.levelDb - quietDb) / (loudDb - quietDb)))
    },
  }
}

const toHeard = (hearing: Hearing, utterance: Utterance, id: string): Heard => {
  const place = (seconds: number) => Math.round((utterance.start + seconds) * 100) / 100
  const words = hearing.words.map((word) => ({ ...word, start: place(word.start), end: place(word.end) }))
  return {
    id,
    text: hearing.text,
    alternatives: hearing.alternatives,
    words,
    start: words[0]?.start ?? place(0),
    end: words.at(-1)?.end ?? utterance.end,
    engine: "offline",
    margin: hearing.margin,
  }
}
