/**
 * Carries out what the loop's pure step wants done: lines to disk first, then sounds and words, then the ear's new
 * grammar. Events are taken one at a time. A state whose lines could not be stored is never taken up, so nothing on the
 * screen or in the voice claims more than what is on disk.
 */
import type { DialogueEvent } from "../dialogue/DialogueEvent"
import type { DialogueState } from "../dialogue/DialogueState"
import type { Effect } from "../dialogue/Effect"
import { emptyDialogue } from "../dialogue/emptyDialogue"
import { tickInMs } from "../dialogue/loneWorker"
import type { Preferences } from "../dialogue/Preferences"
import { mostReminders } from "../dialogue/remind"
import { step } from "../dialogue/step"
import { isWaitedFor } from "../dialogue/unanswered"
import type { SavedFile, Screen } from "../facts/Interpretation"
import type { LogLine } from "../record/LogLine"
import { project } from "../record/project"
import { toSituation } from "../record/toSituation"
import type { HalfDuplex } from "./HalfDuplex"
import type { Parts } from "./Parts"
import type { Unstamped } from "./Session"
import { preferencesOf } from "./settings/Settings"

/** A hand is quicker than the voice: what is still waiting to be said gives way to the answer to it. */
const isByHand = (event: DialogueEvent) =>
  event.type === "heard" ? event.heard.engine === "typed" : byHand.includes(event.type)
const byHand: readonly DialogueEvent["type"][] = ["resumed", "tapped", "entered", "chose", "left"]

export interface LoopHooks {
  changed(): void
  /** These lines are on disk. */
  stored(lines: readonly LogLine[]): void
  /** The store refused; the words are for the worker. */
  trouble(because: string): void
  expect(effect: Extract<Effect, { do: "expect" }>): void
  /** The worker changed by voice how he is spoken to. */
  prefer(preferences: Preferences): void
  alarm(on: boolean): void
  show(screen: Screen): void
  save(what: SavedFile): void
  /** The job was put away by voice, and everything about it has been said. */
  leave(): void
}

export class Loop {
  state: DialogueState
  private queue: Promise<void> = Promise.resolve()
  private reminder: ReturnType<typeof setTimeout> | undefined
  private tick: ReturnType<typeof setTimeout> | undefined

  constructor(
    private readonly parts: Parts,
    private readonly voice: HalfDuplex,
    private readonly hooks: LoopHooks,
  ) {
    this.state = this.empty()
  }

  private empty(): DialogueState {
    return emptyDialogue(this.parts.device, undefined, preferencesOf(this.parts.settings.snapshot()))
  }

  /** Takes an event after all that came before it; resolves when its lines are stored and its words are under way. */
  take(event: Unstamped): Promise<void> {
    this.queue = this.queue.then(() => this.carryOut({ ...event, at: this.parts.now() } as DialogueEvent))
    return this.queue
  }

  /** Resolves once all that was taken is stored. */
  settled(): Promise<void> {
    return this.queue
  }

  /** Shows what these lines say, without writing or speaking: for a window that looks on while another leads. */
  follow(lines: readonly LogLine[]): void {
    const event = { type: "resumed", lines, at: this.parts.now() } as const
    const { state } = step(this.empty(), event, this.parts.tools)
    const said = lines.findLast((line) => line.type === "said")?.words ?? ""
    this.state = { ...state, readBack: null, question: null, lastSaid: said }
    this.hooks.changed()
  }

  /** Takes in what the office wrote meanwhile, without a word; what was being asked stays open. */
  catchUp(job: string): Promise<void> {
    this.queue = this.queue.then(async () => {
      if (this.state.job !== job) return
      const { lines } = await this.parts.store.read(job)
      const record = project(lines)
      if (record.nextSeq <= this.state.record.nextSeq) return
      this.state = { ...this.state, record, checked: this.parts.tools.check(toSituation(record)) }
      this.hooks.changed()
    })
    return this.queue
  }

  /** Puts the job away. Everything it said is already stored. */
  close(): void {
    clearTimeout(this.reminder)
    clearTimeout(this.tick)
    this.voice.hush()
    this.state = this.empty()
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
    if (lines.length > 0) this.hooks.stored(lines)
    this.state = state
    this.hooks.changed()
    for (const effect of effects) this.obey(effect)
    if (isByHand(event)) this.voice.hush()
    const spoken = this.voice.speak(effects)
    void spoken.then(() => this.remindLater())
    if (effects.some((effect) => effect.do === "leave")) void spoken.then(() => this.hooks.leave())
    this.tickLater()
  }

  private obey(effect: Effect): void {
    if (effect.do === "expect") this.hooks.expect(effect)
    else if (effect.do === "prefer") this.hooks.prefer(effect.preferences)
    else if (effect.do === "alarm") this.hooks.alarm(effect.on)
    else if (effect.do === "show") this.hooks.show(effect.screen)
    else if (effect.do === "save") this.hooks.save(effect.what)
  }

  /** The next check-in of a worker who is alone; it comes whatever else happens. */
  private tickLater(): void {
    clearTimeout(this.tick)
    const ms = tickInMs(this.state.loneWorker, this.parts.now())
    if (ms !== null) this.tick = setTimeout(() => void this.take({ type: "ticked" }), ms)
  }

  private remindLater(): void {
    clearTimeout(this.reminder)
    const { listening, reminders } = this.state
    if (!listening || reminders >= mostReminders || !isWaitedFor(this.state)) return
    const { reWarnSeconds } = this.parts.settings.snapshot()
    this.reminder = setTimeout(() => void this.take({ type: "waited" }), reWarnSeconds * 1000)
  }
}
