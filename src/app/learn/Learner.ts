/**
 * Reads the prompts with the worker, one at a time, and learns his voice from how well each fits. The ear knows only the
 * sentence that is asked for; what it hears goes nowhere else, so that nothing of it can become a line of a job.
 */
import type { EarGrammar } from "../../facts/EarGrammar"
import type { Heard } from "../../facts/Heard"
import type { EarState } from "../../speech/Listener"
import { learnVoice } from "../../speech/learnVoice"
import type { Fit } from "../../speech/measureFit"
import type { OfflineListener } from "../../speech/offlineListener"
import type { VoiceFit } from "../../speech/VoiceFit"
import type { SettingsKeeper } from "../settings/SettingsKeeper"
import { prompts } from "./prompts"

/** `again`: something was said and was not the prompt. */
export interface LearnView {
  at: "starting" | "asking" | "heard" | "again" | "learnt" | "failed"
  /** Which prompt is asked for, from nought. */
  index: number
  /** How each prompt went that is behind. */
  marks: readonly ("heard" | "skipped")[]
  ear: { state: EarState; level: number }
  /** Why it failed, in a sentence. */
  because: string
  /** What was learnt, at the end. */
  voice: VoiceFit | null
}

export interface LearnParts {
  ear: Pick<OfflineListener, "prepare" | "start" | "stop" | "fitTo">
  grammarOf(sentence: string): EarGrammar
  settings: SettingsKeeper
  later(act: () => void, ms: number): void
}

/** Long enough to see the tick, and for words that follow the end of speech. */
const [tickMs, wordsWithinMs] = [800, 500]

export class Learner {
  private readonly watchers = new Set<() => void>()
  private readonly measured = new Map<string, Fit>()
  private readonly fits: Fit[] = []
  private ended = false
  private view: LearnView = {
    at: "starting",
    index: 0,
    marks: [],
    ear: { state: "starting", level: 0 },
    because: "",
    voice: null,
  }

  constructor(private readonly parts: LearnParts) {}

  /** The same object until something changes. */
  snapshot = (): LearnView => this.view

  subscribe = (changed: () => void): (() => void) => {
    this.watchers.add(changed)
    return () => void this.watchers.delete(changed)
  }

  /** From a tap, as it opens the microphone. */
  async start(): Promise<void> {
    const { ear } = this.parts
    ear.fitTo("learning")
    const prepared = await ear.prepare(this.grammar())
    if (this.ended) return
    const started = prepared.ok ? await ear.start(this.events()) : prepared
    if (this.ended) return void ear.stop()
    if (!started.ok) return this.fail(started.because)
    this.show({ at: "asking" })
  }

  skip(): void {
    if (this.view.at === "asking" || this.view.at === "again") this.goOn("skipped")
  }

  /** Leaves the ear as it was. Nothing is learnt where the prompts are not at their end. */
  end(): void {
    if (this.ended) return
    this.ended = true
    void this.parts.ear.stop()
    this.parts.ear.fitTo(this.parts.settings.snapshot().voiceFit)
  }

  private events() {
    return {
      fit: (id: string, fit: Fit) => void this.measured.set(id, fit),
      heard: (heard: Heard) => this.hear(heard),
      state: (state: EarState) => this.follow(state),
      level: (level: number) => this.show({ ear: { ...this.view.ear, level } }),
      stumbled: () => this.show({ at: "again" }),
      failed: (because: string) => this.fail(because),
    }
  }

  private hear({ id, text }: Heard): void {
    const fit = this.measured.get(id)
    const { at, index } = this.view
    // The last prompt said twice comes when the next is asked for already.
    if (!fit || text !== prompts[index] || (at !== "asking" && at !== "again")) return
    this.fits.push(fit)
    this.show({ at: "heard" })
    this.parts.later(() => this.goOn("heard"), tickMs)
  }

  private follow(state: EarState): void {
    const spoke = this.view.ear.state === "speech" && state === "listening"
    const { index } = this.view
    this.show({ ear: { ...this.view.ear, state } })
    if (!spoke) return
    this.parts.later(() => {
      const { at, index: now, ear } = this.view
      if (at === "asking" && now === index && ear.state === "listening") this.show({ at: "again" })
    }, wordsWithinMs)
  }

  private goOn(mark: "heard" | "skipped"): void {
    if (this.ended) return
    const { marks, index } = this.view
    this.show({ at: "asking", marks: [...marks, mark], index: index + 1 })
    if (index + 1 >= prompts.length) return this.learn()
    void this.parts.ear.prepare(this.grammar()).then((ready) => ready.ok || this.fail(ready.because))
  }

  private learn(): void {
    const learnt = learnVoice(this.fits)
    if (learnt.ok) this.parts.settings.change({ voiceFit: learnt.value })
    this.end()
    if (learnt.ok) this.show({ at: "learnt", voice: learnt.value })
    else this.show({ at: "failed", because: learnt.because })
  }

  private fail(because: string): void {
    this.end()
    this.show({ at: "failed", because })
  }

  private grammar(): EarGrammar {
    return this.parts.grammarOf(prompts[this.view.index]!)
  }

  private show(change: Partial<LearnView>): void {
    this.view = { ...this.view, ...change }
    for (const changed of this.watchers) changed()
  }
}
