/**
 * The whole loop by sound without a page: a worker's words and the noise around them go into an ear, what it hears goes
 * through the dialogue, and while the app answers the ear is deaf, as on the phone. Noise never stops. What the app says
 * takes no more than a second here: its length changes nothing but the time that the bench takes.
 */
import { contextOf } from "../../../src/dialogue/contextOf"
import type { DialogueEvent } from "../../../src/dialogue/DialogueEvent"
import { emptyDialogue } from "../../../src/dialogue/emptyDialogue"
import { step } from "../../../src/dialogue/step"
import type { Tools } from "../../../src/dialogue/Tools"
import type { EarGrammar } from "../../../src/facts/EarGrammar"
import type { RecordedFact } from "../../../src/facts/Fact"
import type { Heard } from "../../../src/facts/Heard"
import type { Context } from "../../../src/facts/Interpretation"
import { createEarStream, type UtteranceEar } from "../../../src/speech/earStream"
import { takeGrammar } from "./takeGrammar"

/** An ear that takes utterances, however it was made. */
export interface LoopEar extends UtteranceEar {
  take(grammar: EarGrammar): { ok: boolean }
}

export interface SoundLoopParts {
  ear: LoopEar
  tools: Tools
  earGrammar(context: Context): EarGrammar
  /** The next samples of the surroundings, as loud as they are. */
  noise(count: number): Float32Array
}

const rateHz = 16_000
const packet = 800
const start = Date.parse("2026-03-02T09:00:00Z")
const [speakingSeconds, deafMarginMs] = [1, 250]
/** How long the worker waits for an answer before he says it again. */
const [patience, quietBefore] = [2.6, 0.5]

export class SoundLoop {
  state = emptyDialogue("bench")
  seconds = 0
  /** Words and sounds of the app since the last turn. */
  words: string[] = []
  gotIt = false
  heards: Heard[] = []
  private readonly stream
  private deafUntil = 0

  constructor(private readonly parts: SoundLoopParts) {
    this.stream = createEarStream(parts.ear, () => parts.tools.newId())
    this.carryOut({ type: "opened", at: this.now(), job: "bench", place: "bench", pack: "uk-bs7671" })
    this.hush(2.5)
  }

  /** The worker says this, and waits until the app has answered or his patience ends. */
  say(samples: Float32Array): void {
    this.words = []
    this.gotIt = false
    this.heards = []
    this.hush(quietBefore)
    this.feed(samples)
    const until = this.seconds + patience
    while (this.seconds < until && !this.answered) this.feed(new Float32Array(packet))
    while (this.deafUntil > this.seconds) this.feed(new Float32Array(packet))
  }

  /** What was read back last and may be challenged. */
  readBackFacts(): RecordedFact[] {
    const ids = this.state.readBack?.entries ?? []
    return this.state.record.entries.filter((held) => ids.includes(held.entry)).map((held) => held.fact)
  }

  private get answered() {
    return this.words.length > 0 || this.gotIt
  }

  private hush(seconds: number): void {
    const until = Math.max(this.seconds + seconds, this.deafUntil + 0.3)
    while (this.seconds < until) this.feed(new Float32Array(packet))
  }

  private feed(samples: Float32Array): void {
    for (let at = 0; at < samples.length; at += packet) {
      const piece = samples.slice(at, at + packet)
      const noise = this.parts.noise(piece.length)
      for (let n = 0; n < piece.length; n++) piece[n]! += noise[n]!
      this.seconds += piece.length / rateHz
      if (this.stream.deaf && this.seconds >= this.deafUntil) this.stream.undeafen(deafMarginMs)
      for (const { heard } of this.stream.push(piece, rateHz)) {
        this.heards.push(heard)
        if (!this.stream.deaf) this.carryOut({ type: "heard", at: this.now(), heard })
      }
    }
  }

  private carryOut(event: DialogueEvent): void {
    const { state, effects } = step(this.state, event, this.parts.tools)
    this.state = state
    for (const effect of effects) {
      if (effect.do === "say") this.words.push(effect.words)
      if (effect.do === "sound" && effect.sound === "gotIt") this.gotIt = true
    }
    if (effects.some((effect) => effect.do === "say" || effect.do === "sound")) {
      this.stream.deafen()
      this.deafUntil = this.seconds + speakingSeconds
    }
    takeGrammar(this.parts.ear, this.parts.earGrammar(contextOf(state, event.at)))
  }

  private now(): string {
    return new Date(start + this.seconds * 1000).toISOString()
  }
}
