/**
 * The browser's own recogniser as a second ear, for those who choose it. It stands in front of another ear that is ready
 * from the first second and takes over for the rest of the visit when the browser's fails. It listens in one short
 * session after the other; a session that overlaps the app's own voice is thrown away whole.
 */
import { v7 } from "uuid"
import type { EarGrammar } from "../facts/EarGrammar"
import type { Heard } from "../facts/Heard"
import { done, type Outcome, refuse } from "../facts/Outcome"
import type { EarId } from "./EarId"
import type { Folded } from "./foldResults"
import { jsgfWords } from "./jsgfWords"
import type { EarState, Listener, ListenerEvents } from "./Listener"
import { findOnDevice, type OnDeviceCalls } from "./onDevicePack"
import { isHidden, watchPage } from "./pageVisibility"
import { afterError, reasonFor } from "./recognitionErrors"
import { type Recognition, type RecognitionSession, runSession, type SessionEnd } from "./recognitionSession"

export interface BrowserListenerOptions {
  /** A fresh recogniser of the browser; null where it has none. */
  make: (() => Recognition) | null
  /** The ear that takes over. It is prepared together with this one. */
  fallback: Listener
  /** The browser's calls for recognition on the device, where it has them. */
  onDevice?: OnDeviceCalls
  /** Makes a phrase hint, where the browser takes them. */
  makePhrase?: (phrase: string) => unknown
  /** Languages in the order they are tried; underscores are put right. */
  langs?: readonly string[]
  /** Why it failed for good on this device and browser version, from an earlier visit. */
  remembered?: () => string | null
  remember?: (because: string) => void
  /** Told which ear listens from now on. */
  using?: (ear: EarId) => void
  /** The sound never leaves the device; where that cannot be had, the fallback listens. */
  deviceOnly?: boolean
  newId?: () => string
  /** Seconds on a clock that never goes back. */
  now?: () => number
}

/** The recogniser lags behind the loudspeaker by up to two seconds; deafness lasts at least so much longer (S15). */
export const echoGuardMs = 1500
/** Pauses before the next session, by how many in a row brought nothing. */
const pausesMs = [50, 250, 1000, 3000]
/** Sessions in a row that neither ended nor said a word, after which the browser's recogniser is left. */
const mostMute = 2
/** How long the microphone may stay without a sign of life once the page is back. */
const aliveMs = 2000
/** Below what counts as sure, and enough for a yes. */
const unsureMargin = 0.5

export const createBrowserListener = (options: BrowserListenerOptions): Listener =>
  new BrowserListener(options).listener()

class BrowserListener {
  private events: ListenerEvents | null = null
  private grammar: EarGrammar | null = null
  private session: RecognitionSession | null = null
  private onFallback = false
  private state: EarState = "stopped"
  private deaf = false
  private released = false
  private empty = 0
  private mute = 0
  private language = 0
  private plain = false
  private local: string | null = null
  private next: ReturnType<typeof setTimeout> | undefined
  private readonly langs: string[]
  private readonly now: () => number

  constructor(private readonly options: BrowserListenerOptions) {
    this.langs = (options.langs ?? ["en-GB", "en-US"]).map((lang) => lang.replaceAll("_", "-"))
    this.now = options.now ?? (() => performance.now() / 1000)
  }

  listener(): Listener {
    return {
      prepare: (grammar) => this.prepare(grammar),
      start: (events) => this.start(events),
      deafen: () => this.deafen(),
      undeafen: (marginMs) => this.undeafen(marginMs),
      stop: () => this.stop(),
      release: async () => {
        await this.stop()
        this.released = true
        await this.options.fallback.release()
      },
    }
  }

  private async prepare(grammar: EarGrammar): Promise<Outcome> {
    if (this.released) return refuse("The ear has been put away.")
    // The other ear's refusal counts for both: it has to be able to take over in the middle of a word.
    const outcome = await this.options.fallback.prepare(grammar)
    this.grammar = outcome.ok ? grammar : null
    if (!outcome.ok) this.session?.drop()
    else if (this.events && !this.onFallback) this.listenSoon(0)
    return outcome
  }

  private async start(events: ListenerEvents): Promise<Outcome> {
    if (!this.grammar || this.released) return refuse("The ear is not ready.")
    this.events = events
    this.deaf = false
    const known = this.options.make ? (this.options.remembered?.() ?? null) : "This browser has no recogniser."
    if (known !== null || this.onFallback) return this.turnToFallback()
    if (this.options.deviceOnly) await this.lookHere()
    else void this.lookOnDevice()
    if (this.options.deviceOnly && this.local === null) return this.missOnDevice()
    this.options.using?.(this.options.deviceOnly ? "device" : "browser")
    watchPage(this.pageChanged, true)
    this.show("listening")
    this.listen()
    return done(undefined)
  }

  /** On the device where that is possible; never waited for, as the pack may never come. */
  private async lookOnDevice(): Promise<void> {
    if (this.options.onDevice && this.local === null) this.local = await findOnDevice(this.options.onDevice, this.langs)
  }

  /** What is on the device now; a pack is never waited for here, as somebody wants to speak. */
  private async lookHere(): Promise<void> {
    const { onDevice } = this.options
    const calls: OnDeviceCalls = onDevice?.available ? { available: (asked) => onDevice.available!(asked) } : {}
    this.local ??= await findOnDevice(calls, this.langs)
  }

  /** Not remembered: the pack may have come by the next time. */
  private async missOnDevice(): Promise<Outcome> {
    const started = await this.turnToFallback()
    if (started.ok) this.events?.stumbled?.("There is no recogniser on this device. I listen with the offline ear.")
    return started
  }

  private listenSoon(waitMs: number): void {
    clearTimeout(this.next)
    this.next = setTimeout(() => this.listen(), waitMs)
  }

  private listen(): void {
    if (!this.events || !this.grammar || this.deaf || this.session || this.onFallback || isHidden()) return
    const recognition = this.options.make!()
    recognition.lang = this.local ?? this.langs[this.language] ?? "en-US"
    recognition.continuous = false
    recognition.interimResults = true
    recognition.maxAlternatives = 4
    const canPromise = "processLocally" in recognition
    if (this.options.deviceOnly && !(canPromise && this.local !== null))
      return this.giveUp("The browser's recogniser cannot stay on this device.")
    if (this.local !== null && canPromise) recognition.processLocally = true
    this.hint(recognition)
    const began = this.now()
    let heardWords = false
    const session = runSession(recognition, {
      alive: () => clearTimeout(this.aliveTimer),
      speech: () => this.show("speech"),
      words: (folded) => {
        heardWords = true
        this.handOver(folded, began)
      },
      over: (end) => {
        if (this.session !== session) return
        this.session = null
        this.after(end, heardWords)
      },
    })
    this.session = session
  }

  /** Hints bend the recogniser towards the product's words, where the browser takes hints and works on the device. */
  private hint(recognition: Recognition): void {
    const { makePhrase } = this.options
    if (this.plain || !makePhrase || this.local === null || !("phrases" in recognition)) return
    try {
      recognition.phrases = jsgfWords(this.grammar!.jsgf).map(makePhrase)
    } catch {
      this.plain = true
    }
  }

  private handOver({ text, others }: Folded, began: number): void {
    if (!this.events || this.deaf) return
    const heard: Heard = {
      id: this.options.newId?.() ?? v7(),
      text,
      alternatives: others,
      words: [],
      start: began,
      end: Math.max(this.now(), began + 0.01),
      engine: "browser",
      // Its scores say nothing that can be relied on (S02), so every value waits for a yes.
      margin: unsureMargin,
    }
    this.events.heard(heard)
    this.show("listening")
  }

  private after(end: SessionEnd, heardWords: boolean): void {
    this.empty = heardWords ? 0 : this.empty + 1
    if (heardWords) this.mute = 0
    if (!this.events) return
    if (end.by === "cap" && !heardWords) {
      this.mute += 1
      if (end.sound || this.mute >= mostMute) return this.giveUp("I could hear sound but got no words.")
    }
    if (end.by === "error") {
      const act = afterError(end.error)
      if (act === "giveUp") return this.giveUp(reasonFor(end.error))
      if (act === "plain") this.plain = true
      if (act === "language" && !this.nextLanguage()) return this.giveUp(reasonFor(end.error))
    }
    this.show(this.deaf ? "deaf" : "listening")
    this.listenSoon(pausesMs[Math.min(this.empty, pausesMs.length - 1)]!)
  }

  private nextLanguage(): boolean {
    this.local = null
    this.language += 1
    return this.language < this.langs.length
  }

  /** The other ear for the rest of the visit; the worker is told once, and asked to say it again. */
  private giveUp(because: string): void {
    this.options.remember?.(because)
    const { events } = this
    void this.turnToFallback().then((started) => {
      if (!started.ok) events?.failed?.(started.because)
      else events?.stumbled?.(`${because} I listen with the offline ear now. Say that again.`)
    })
  }

  private async turnToFallback(): Promise<Outcome> {
    this.onFallback = true
    this.options.using?.("offline")
    this.quieten()
    const { events } = this
    if (!events) return done(undefined)
    const started = await this.options.fallback.start(events)
    if (started.ok && this.deaf) this.options.fallback.deafen()
    return started
  }

  private deafen(): void {
    this.deaf = true
    if (this.onFallback) return this.options.fallback.deafen()
    this.session?.drop()
    this.session = null
    this.show("deaf")
  }

  private undeafen(marginMs: number): void {
    if (this.onFallback) {
      this.deaf = false
      return this.options.fallback.undeafen(marginMs)
    }
    clearTimeout(this.next)
    this.next = setTimeout(
      () => {
        this.deaf = false
        this.show("listening")
        this.listen()
      },
      Math.max(marginMs, echoGuardMs),
    )
  }

  /** What was said just before is still handed over; then nothing any more. */
  private async stop(): Promise<void> {
    const { session } = this
    if (this.onFallback) await this.options.fallback.stop()
    else if (session?.hasWords) {
      session.stop()
      await new Promise<void>((resolve) => {
        const look = setInterval(() => {
          if (this.session === session) return
          clearInterval(look)
          resolve()
        }, 50)
      })
    }
    this.quieten()
    this.show("stopped")
    this.events = null
  }

  private quieten(): void {
    clearTimeout(this.next)
    clearTimeout(this.aliveTimer)
    watchPage(this.pageChanged, false)
    this.session?.drop()
    this.session = null
  }

  private aliveTimer: ReturnType<typeof setTimeout> | undefined

  /** A hidden page is the end of the session, whatever events come; on the way back everything is made anew (S13). */
  private readonly pageChanged = (): void => {
    if (isHidden()) {
      const lost = this.session?.hasWords ?? false
      this.session?.drop()
      this.session = null
      if (lost) this.events?.stumbled?.("I stopped listening while the page was away. Say that again.")
      return
    }
    this.listen()
    this.aliveTimer = setTimeout(
      () => this.events?.failed?.("Nothing comes from the microphone. Open the page again."),
      aliveMs,
    )
  }

  private show(state: EarState): void {
    if (state === this.state || this.onFallback) return
    this.state = state
    this.events?.state?.(state)
  }
}
