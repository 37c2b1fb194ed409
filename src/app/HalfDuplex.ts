/**
 * Speaks sounds and sentences one after the other and keeps the ear deaf meanwhile, and a little longer: the room and
 * the recogniser both lag behind the loudspeaker.
 */
import type { Effect } from "../dialogue/Effect"
import type { Speaker } from "../speech/Speaker"

/** How long the ear stays deaf after the voice has ended. */
export const deafMarginMs = 250

export interface DuplexHooks {
  saying(words: string | null): void
  deafen(): void
  undeafen(marginMs: number): void
  /** Whether the ear stays open while the voice speaks. */
  mayInterrupt(): boolean
  trouble(because: string): void
  /** While on, what is said is as loud as the device can. */
  loud(on: boolean): void
  /** In a loud place every answer begins with a sound, and the words come after a pause. */
  soundFirst(): boolean
}

/** Between the sound and the words in a loud place: long enough to turn an ear (our choice, no source). */
export const turnMs = 450

const withSoundFirst = (effects: readonly Effect[]): readonly Effect[] =>
  effects[0]?.do === "sound" ? effects : [{ do: "sound", sound: "gotIt" }, ...effects]

export class HalfDuplex {
  private queue: Promise<void> = Promise.resolve()
  private waiting = 0
  private isDeaf = false
  /** What has not been said to its end, in order. */
  private unsaid: readonly Effect[] = []
  /** Counts up at each hush, so that what waited before it is dropped. */
  private round = 0
  ready = false

  constructor(
    private readonly speaker: Speaker,
    private readonly hooks: DuplexHooks,
  ) {}

  /** From a tap: browsers let nothing sound before. */
  async wake(): Promise<boolean> {
    const outcome = await this.speaker.prepare()
    this.ready = outcome.ok
    if (!outcome.ok) this.hooks.trouble(outcome.because)
    return outcome.ok
  }

  /** Resolves when all of it has been spoken or dropped. */
  speak(effects: readonly Effect[]): Promise<void> {
    const plain = effects.filter((effect) => effect.do === "sound" || effect.do === "say")
    if (plain.length === 0) return this.queue
    const loud = this.hooks.soundFirst() ? withSoundFirst(plain) : plain
    const { round } = this
    this.waiting += 1
    this.unsaid = [...this.unsaid, ...loud]
    if (!this.hooks.mayInterrupt()) {
      this.isDeaf = true
      this.hooks.deafen()
    }
    this.queue = this.queue.then(async () => {
      for (const effect of loud) {
        if (round !== this.round) break
        await this.utter(effect)
        if (round === this.round) this.unsaid = this.unsaid.slice(1)
      }
      this.waiting -= 1
      if (this.waiting > 0) return
      this.hooks.saying(null)
      if (!this.isDeaf) return
      this.isDeaf = false
      this.hooks.undeafen(deafMarginMs)
    })
    return this.queue
  }

  /** Resolves once nothing is being said. */
  idle(): Promise<void> {
    return this.queue
  }

  /** From a tap: wakes the voice and says this in place of what it was saying. */
  async prompt(words: string): Promise<void> {
    await this.wake()
    this.hush()
    return this.speak([{ do: "say", words }])
  }

  /** Silences the voice in the middle of a word; gives what was cut off and what had not begun. */
  interrupt(): readonly Effect[] {
    const { unsaid } = this
    this.hush()
    return unsaid
  }

  hush(): void {
    this.round += 1
    this.unsaid = []
    this.speaker.hush()
  }

  private async utter(effect: Effect): Promise<void> {
    if (effect.do === "say") this.hooks.saying(effect.words)
    if (!this.ready) return
    // Marks for the bench: how long the worker waits for an answer.
    performance.mark(`bothhands.${effect.do}`)
    if (effect.do === "sound") {
      await this.speaker.sound(effect.sound)
      if (this.hooks.soundFirst()) await new Promise((fulfil) => setTimeout(fulfil, turnMs))
      return
    }
    if (effect.do !== "say") return
    const { round } = this
    this.hooks.loud(effect.loud ?? false)
    const outcome = await this.speaker.say(effect.words)
    this.hooks.loud(false)
    // A sentence that was cut short on purpose is no trouble.
    if (!outcome.ok && round === this.round) this.hooks.trouble(outcome.because)
  }
}
