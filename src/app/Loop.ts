/**
 * Carries out what the loop's pure step wants done: lines to disk first, then sounds and words, then the ear's new
 * grammar. Events are taken one at a time. A state whose lines could not be stored is never taken up, so nothing on the
 * screen or in the voice claims more than what is on disk.
 */
import type { DialogueEvent } from "../dialogue/DialogueEvent"
import type { DialogueState } from "../dialogue/DialogueState"
import type { Effect } from "../dialogue/Effect"
import { emptyDialogue } from "../dialogue/emptyDialogue"
import { mostReminders, step } from "../dialogue/step"
import { isWaitedFor } from "../dialogue/unanswered"
import type { HalfDuplex } from "./HalfDuplex"
import type { Parts } from "./Parts"
import type { Unstamped } from "./Session"

/** How long a warning may go unanswered, in silence, before it is said again. */
export const remindAfterMs = 12_000

/** A hand is quicker than the voice: what is still waiting to be said gives way to the answer to it. */
const isByHand = (event: DialogueEvent) =>
  event.type === "heard" ? event.heard.engine === "typed" : event.type !== "waited" && event.type !== "opened"

export interface LoopHooks {
  changed(): void
  /** The store refused; the words are for the worker. */
  trouble(because: string): void
  expect(effect: Extract<Effect, { do: "expect" }>): void
}

export class Loop {
  state: DialogueState
  private queue: Promise<void> = Promise.resolve()
  private reminder: ReturnType<typeof setTimeout> | undefined

  constructor(
    private readonly parts: Parts,
    private readonly voice: HalfDuplex,
    private readonly hooks: LoopHooks,
  ) {
    this.state = emptyDialogue(parts.device)
  }

  /** Takes an event after all that came before it; resolves when its lines are stored and its words are under way. */
  take(event: Unstamped): Promise<void> {
    this.queue = this.queue.then(() => this.carryOut({ ...event, at: this.parts.now() } as DialogueEvent))
    return this.queue
  }

  /** Puts the job away. Everything it said is already stored. */
  close(): void {
    clearTimeout(this.reminder)
    this.voice.hush()
    this.state = emptyDialogue(this.parts.device)
    this.hooks.changed()
  }

  private async carryOut(event: DialogueEvent): Promise<void> {
    clearTimeout(this.reminder)
    const { state, effects } = step(this.state, event, this.parts.tools)
    const lines = effects.flatMap((effect) => (effect.do === "append" ? effect.lines : []))
    if (lines.length > 0) {
      const stored = await this.parts.store.append(lines)
      if (!stored.ok) {
        this.hooks.trouble(stored.because)
        void this.voice.speak([
          { do: "sound", sound: "sayAgain" },
          { do: "say", words: `Not saved. ${stored.because}` },
        ])
        return
      }
    }
    this.state = state
    this.hooks.changed()
    for (const effect of effects) if (effect.do === "expect") this.hooks.expect(effect)
    if (isByHand(event)) this.voice.hush()
    const spoken = this.voice.speak(effects)
    void spoken.then(() => this.remindLater())
  }

  private remindLater(): void {
    clearTimeout(this.reminder)
    const { listening, reminders } = this.state
    if (!listening || reminders >= mostReminders || !isWaitedFor(this.state)) return
    this.reminder = setTimeout(() => void this.take({ type: "waited" }), remindAfterMs)
  }
}
