/**
 * A browser's speech output that can be made to misbehave in each way that was reported from the field. It runs on the
 * test's clock: nothing happens until time is moved.
 */
import type { ListedVoice } from "../../src/speech/pickVoice"

export interface Utterance {
  text: string
  lang: string
  rate: number
  volume: number
  voice: ListedVoice | null
  onstart: (() => void) | null
  onend: (() => void) | null
  onerror: ((event: { error: string }) => void) | null
  onboundary: (() => void) | null
}

export interface Misbehaviour {
  /** No `end` ever comes, although it speaks. */
  losesEnd?: boolean
  /** Nothing is heard and no event comes. */
  neverStarts?: boolean
  /** What `error` says instead of speaking. */
  error?: string
  /** Speaks and ends without saying that it started. */
  noStart?: boolean
}

export const localVoice: ListedVoice = { name: "UK", lang: "en-GB", localService: true }

export class FakeSynthesis {
  voices: ListedVoice[] = [localVoice]
  how: Misbehaviour = {}
  paused = false
  pending = false
  speaking = false
  /** Everything that really came out, with the time it began. */
  readonly spoken: { at: number; utterance: Utterance }[] = []
  /** Everything that was handed over, heard or not. */
  readonly asked: Utterance[] = []
  private readonly listeners = new Set<() => void>()
  private readonly timers = new Set<ReturnType<typeof setTimeout>>()

  readonly makeUtterance = (text: string): SpeechSynthesisUtterance => {
    const quiet = { onstart: null, onend: null, onerror: null, onboundary: null }
    const utterance: Utterance = { text, lang: "", rate: 1, volume: 1, voice: null, ...quiet }
    return utterance as unknown as SpeechSynthesisUtterance
  }

  readonly getVoices = () => this.voices
  readonly addEventListener = (_: string, listener: () => void) => this.listeners.add(listener)
  readonly removeEventListener = (_: string, listener: () => void) => this.listeners.delete(listener)
  readonly resume = () => {
    this.paused = false
  }

  /** Something that is not the app's hangs in the queue: nothing after it is heard until it is cancelled. */
  stick(): void {
    this.pending = true
  }

  /** The list changes, with or without the event. */
  arrive(voices: ListedVoice[], event: boolean): void {
    this.voices = voices
    if (event) for (const listener of this.listeners) listener()
  }

  readonly cancel = () => {
    for (const timer of this.timers) clearTimeout(timer)
    this.timers.clear()
    this.speaking = this.pending = false
  }

  readonly speak = (given: SpeechSynthesisUtterance) => {
    const utterance = given as unknown as Utterance
    if (utterance.text.trim() === "") return
    this.asked.push(utterance)
    if (this.pending) return
    const { error, neverStarts, losesEnd, noStart } = this.how
    if (error !== undefined) return this.later(10, () => utterance.onerror?.({ error }))
    if (neverStarts) {
      this.pending = true
      return
    }
    this.speaking = true
    this.later(20, () => {
      this.spoken.push({ at: Date.now(), utterance })
      if (!noStart) utterance.onstart?.()
    })
    if (losesEnd) return
    this.later(20 + (70 * utterance.text.length) / utterance.rate, () => {
      this.speaking = false
      utterance.onend?.()
    })
  }

  get asBrowser(): SpeechSynthesis {
    return this as unknown as SpeechSynthesis
  }

  private later(waitMs: number, act: () => void): void {
    const timer = setTimeout(() => {
      this.timers.delete(timer)
      act()
    }, waitMs)
    this.timers.add(timer)
  }
}
