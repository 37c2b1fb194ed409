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
  trouble(because: string): void
}

export class HalfDuplex {
  private queue: Promise<void> = Promise.resolve()
  private waiting = 0
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
    const loud = effects.filter((effect) => effect.do === "sound" || effect.do === "say")
    if (loud.length === 0) return this.queue
    const { round } = this
    this.waiting += 1
    this.hooks.deafen()
    this.queue = this.queue.then(async () => {
      for (const effect of loud) if (round === this.round) await this.utter(effect)
      this.waiting -= 1
      if (this.waiting > 0) return
      this.hooks.saying(null)
      this.hooks.undeafen(deafMarginMs)
    })
    return this.queue
  }

  /** Resolves once nothing is being said. */
  idle(): Promise<void> {
    return this.queue
  }

  hush(): void {
    this.round += 1
    this.speaker.hush()
  }

  private async utter(effect: Effect): Promise<void> {
    if (effect.do === "say") this.hooks.saying(effect.words)
    if (!this.ready) return
    // Marks for the bench: how long the worker waits for an answer.
    performance.mark(`bothhands.${effect.do}`)
    if (effect.do === "sound") return this.speaker.sound(effect.sound)
    if (effect.do !== "say") return
    const { round } = this
    const outcome = await this.speaker.say(effect.words)
    // A sentence that was cut short on purpose is no trouble.
    if (!outcome.ok && round === this.round) this.hooks.trouble(outcome.because)
  }
}
