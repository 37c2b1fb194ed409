/**
 * With a headset, speech stops the read-back and the words said then are kept. Three things never pass: what may be the
 * app's own words, what the ear was in doubt of, and a yes, since nobody has heard the whole of what it would confirm. What
 * passes waits for a yes. Knows no clock: times are given in ms.
 */
import { mayBeOwnWords } from "../dialogue/mayBeOwnWords"
import type { Heard } from "../facts/Heard"
import type { EarState } from "../speech/Listener"

export interface BargeInHooks {
  /** Stops the voice in the middle of a word. */
  silence(): void
  isYes(heard: Heard): boolean
  /** Nothing came of it: what was cut off is to be said again. */
  resume(): void
  /** It kept hearing nothing but itself: no more interrupting. */
  giveUp(): void
}

/** The loudspeaker and the recogniser lag: what begins so soon after the voice has ended may still be its echo, in ms. */
export const tailMs = 400
/** Interruptions in a row that nothing came of, after which the headset is taken to be none. */
export const mostVain = 3
/** Enough to be taken, and below what goes unchallenged. */
const unsureMargin = 0.5

interface Sentence {
  words: string
  /** Null while it is being said. */
  endMs: number | null
}

export class BargeIn {
  /** Whether speech may interrupt at all, in this visit. */
  isOff = false
  private said: Sentence[] = []
  private speechFromMs: number | null = null
  /** What the speech began with: in the middle of a sentence, or right after its end. */
  private overlaps: "voice" | "tail" | null = null
  /** The voice was silenced, and nobody knows yet what for. */
  private cut = false
  private vain = 0

  constructor(private readonly hooks: BargeInHooks) {}

  /** A sentence begins, or, with null, the voice has ended. */
  saying(words: string | null, nowMs: number): void {
    const last = this.said.at(-1)
    if (last && last.endMs === null) last.endMs = nowMs
    if (words === null) return
    this.said = [...this.said.slice(-7), { words, endMs: null }]
    if (this.speechFromMs !== null) this.overlaps = "voice"
  }

  /** What the ear is doing, while interrupting is on. */
  state(state: EarState, nowMs: number): void {
    if (state !== "speech") {
      this.speechFromMs = null
      return
    }
    if (this.speechFromMs !== null) return
    const last = this.said.at(-1)
    this.speechFromMs = nowMs
    this.overlaps = null
    if (last && last.endMs !== null && nowMs - last.endMs < tailMs) this.overlaps = "tail"
    if (last?.endMs !== null) return
    this.overlaps = "voice"
    this.cut = true
    this.hooks.silence()
  }

  /** What is to be made of an utterance: it passes, perhaps as one that waits for a yes, or it is dropped. */
  take(heard: Heard): Heard | null {
    const { overlaps } = this
    this.overlaps = null
    const isOwn =
      overlaps !== null &&
      mayBeOwnWords(
        this.said.slice(-4).map((one) => one.words),
        heard.text,
      )
    if (overlaps !== "voice") return isOwn ? null : this.pass(heard)
    const inDoubt = heard.margin !== null && heard.margin < unsureMargin
    if (isOwn || inDoubt || this.hooks.isYes(heard)) {
      if (this.cut) this.settle()
      else if (!isOwn) this.hooks.resume()
      return null
    }
    return this.pass({ ...heard, margin: Math.min(heard.margin ?? unsureMargin, unsureMargin) })
  }

  /** Some time after speech has ended: where nothing was heard in it, it was noise. */
  settle(): void {
    if (!this.cut || this.speechFromMs !== null) return
    this.cut = false
    this.vain += 1
    if (this.vain >= mostVain) {
      this.isOff = true
      this.hooks.giveUp()
    }
    this.hooks.resume()
  }

  private pass(heard: Heard): Heard {
    this.cut = false
    this.vain = 0
    return heard
  }
}
