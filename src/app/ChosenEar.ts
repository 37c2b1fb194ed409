/**
 * The ear that the worker chose, behind one listener. A choice counts from the next time that listening starts; until
 * another is chosen nothing but the offline ear is ever made, so that no sound can leave the device.
 */
import type { EarGrammar } from "../facts/EarGrammar"
import type { Outcome } from "../facts/Outcome"
import type { BrowserListenerOptions } from "../speech/browserListener"
import type { EarId } from "../speech/EarId"
import type { Listener, ListenerEvents } from "../speech/Listener"

export interface ChosenEarParts {
  offline: Listener
  chosen(): EarId
  /** The browser's recogniser in front of the offline ear. */
  makeBrowserEar(options: Pick<BrowserListenerOptions, "fallback" | "using"> & { deviceOnly: boolean }): Listener
}

const names: Record<EarId, string> = {
  offline: "offline ear",
  browser: "the browser’s recogniser, which may send the sound to its maker",
  device: "the browser’s recogniser, on this device",
}

export class ChosenEar implements Listener {
  private made: { id: EarId; listener: Listener; used: EarId } | null = null
  private listening = false

  constructor(private readonly parts: ChosenEarParts) {}

  /** Which ear listens, or would, for the screen. */
  name = (): string => names[this.made?.used ?? "offline"]

  async prepare(grammar: EarGrammar): Promise<Outcome> {
    return this.current().prepare(grammar)
  }

  async start(events: ListenerEvents): Promise<Outcome> {
    const started = await this.current().start(events)
    this.listening = started.ok
    return started
  }

  deafen(): void {
    this.made?.listener.deafen()
  }

  undeafen(marginMs: number): void {
    this.made?.listener.undeafen(marginMs)
  }

  async stop(): Promise<void> {
    await this.made?.listener.stop()
    this.listening = false
  }

  async release(): Promise<void> {
    this.listening = false
    await (this.made?.listener ?? this.parts.offline).release()
  }

  private current(): Listener {
    const id = this.parts.chosen()
    // One that has failed is made anew as well, as the worker may have it tried again.
    const isFit = this.made?.id === id && this.made.used === id
    if (!this.made || !(isFit || this.listening)) this.made = { id, listener: this.make(id), used: id }
    return this.made.listener
  }

  private make(id: EarId): Listener {
    if (id === "offline") return this.parts.offline
    const using = (used: EarId) => {
      if (this.made) this.made.used = used
    }
    return this.parts.makeBrowserEar({ fallback: this.parts.offline, using, deviceOnly: id === "device" })
  }
}
