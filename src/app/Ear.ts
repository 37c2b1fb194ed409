/** The ear in use, on the microphone or on the sample recording, with what the screen shows of it. */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Heard } from "../facts/Heard"
import type { EarState, Listener, UtteranceSound } from "../speech/Listener"

export interface EarHooks {
  heard(heard: Heard): void
  /** The sound of an utterance, just before the utterance itself. */
  sound(heard: string, sound: UtteranceSound): void
  changed(): void
  trouble(because: string): void
  /** One utterance was lost; the ear goes on. The words are fit to be spoken. */
  stumbled(because: string): void
}

export class Ear {
  state: EarState = "stopped"
  level = 0
  starting = false
  private listener: Listener | null = null
  private prepared = ""

  constructor(private readonly hooks: EarHooks) {}

  get isOn(): boolean {
    return this.listener !== null
  }

  /** Whether this listener is the one that is on. */
  isOnly(listener: Listener): boolean {
    return this.listener === listener
  }

  /** Starts listening with this listener; what was listening before is released. */
  async start(listener: Listener, grammar: EarGrammar): Promise<boolean> {
    await this.stop()
    this.starting = true
    this.set("starting")
    const ready = await listener.prepare(grammar)
    const started = ready.ok ? await listener.start(this.events(listener)) : ready
    this.starting = false
    if (!started.ok) {
      this.hooks.trouble(started.because)
      this.set("stopped")
      return false
    }
    performance.mark("bothhands.listening")
    this.listener = listener
    this.prepared = nameOf(grammar)
    return true
  }

  /** The ear should be ready for this from the next utterance on. */
  async expect(wanted: () => EarGrammar): Promise<void> {
    if (!this.listener) return
    const grammar = wanted()
    const name = nameOf(grammar)
    if (this.prepared === name) return
    this.prepared = name
    const outcome = await this.listener.prepare(grammar)
    if (!outcome.ok) this.hooks.trouble(outcome.because)
  }

  deafen(): void {
    this.listener?.deafen()
  }

  undeafen(marginMs: number): void {
    this.listener?.undeafen(marginMs)
  }

  async stop(): Promise<void> {
    const { listener } = this
    this.listener = null
    if (listener) await listener.stop()
    this.set("stopped")
  }

  private events(listener: Listener) {
    const isCurrent = () => this.listener === listener || this.starting
    return {
      heard: (heard: Heard) => {
        if (isCurrent()) this.hooks.heard(heard)
      },
      sound: (heard: string, sound: UtteranceSound) => {
        if (isCurrent()) this.hooks.sound(heard, sound)
      },
      state: (state: EarState) => {
        if (isCurrent()) this.set(state)
      },
      level: (level: number) => {
        this.level = level
        this.hooks.changed()
      },
      stumbled: (because: string) => this.hooks.stumbled(because),
      failed: (because: string) => {
        this.hooks.trouble(because)
        this.set("stopped")
        this.listener = null
      },
    }
  }

  private set(state: EarState): void {
    this.state = state
    if (state === "stopped") this.level = 0
    this.hooks.changed()
  }
}

/** The same question is another one for the ear after something was misheard under it. */
const nameOf = ({ id, unlikely = [] }: EarGrammar): string => [id, ...unlikely].join("\n")
