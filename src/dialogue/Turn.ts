/**
 * One step of the loop while it is being worked out. It is changed in place inside the step and thrown away after it;
 * from outside, `step` stays pure. Whatever is said is also a line of the log, and lines always come before words.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Draft, LogLine } from "../record/LogLine"
import { applyLine } from "../record/project"
import { reopeningFor } from "../record/reopening"
import { stampLine } from "../record/stampLine"
import { assumedInstrument, toSituation } from "../record/toSituation"
import { contextOf } from "./contextOf"
import type { DialogueState } from "./DialogueState"
import type { Effect, SoundName } from "./Effect"
import type { JobPlan } from "./JobPlan"
import type { Preferences } from "./Preferences"
import type { Tools } from "./Tools"
import { usualPlan } from "./usualPlan"

export class Turn {
  readonly lines: LogLine[] = []
  /** Entries made since the turn last spoke, in order. */
  readonly written: string[] = []
  /** All entries of the turn that are read back and may be challenged. */
  readonly challengeable: string[] = []
  /** How things stood before the turn. */
  readonly before: DialogueState
  /** Something is put right or taken back in this turn: what comes of it is read back whole, however short the worker likes it. */
  isRepair = false
  /** What is written in this turn waits for a yes, however plain it was. */
  mustBeAnswered = false
  /** The same breath holds more than an answer, so that nothing older is asked about before that is read back. */
  hasMore = false
  /** Said after the warnings of this turn and before what is read back. */
  aside = ""
  /** Something in the same breath is about to be asked. */
  isDoubted = false
  /** What an ear gave in this turn; null where a hand acted. */
  heard: Heard | null = null
  private readonly settings: Effect[] = []
  private readonly sounds: Effect[] = []
  private readonly says: Extract<Effect, { do: "say" }>[] = []
  private isLeaving = false

  constructor(
    public state: DialogueState,
    readonly at: string,
    readonly tools: Tools,
  ) {
    this.before = state
  }

  /** What a whole job of this kind holds. */
  get plan(): JobPlan {
    return this.tools.plan ?? usualPlan
  }

  set(change: Partial<DialogueState>): void {
    this.state = { ...this.state, ...change }
  }

  /**
   * Adds a line to the log and to the record, and gives its id. What changes a job that was signed off opens it again,
   * and a clock that went back is put on record once, before the first line of the earlier time.
   */
  add(draft: Draft, id?: string): string {
    const before = this.state.record.lastAt
    if (before !== null && Date.parse(this.at) < Date.parse(before)) this.put({ type: "clock_back", before })
    const reopening = reopeningFor(this.state.record, draft)
    if (reopening) {
      this.put(reopening)
      this.say("It was signed off. This opens it again.")
    }
    return this.put(draft, id)
  }

  private put(draft: Draft, id = this.tools.newId()): string {
    const { job, device, by, record } = this.state
    const line = stampLine(draft, { id, job: job ?? "", at: this.at, by, device, seq: record.nextSeq })
    this.lines.push(line)
    this.set({ record: applyLine(record, line) })
    return id
  }

  sound(sound: SoundName): void {
    this.sounds.push({ do: "sound", sound })
  }

  /** Speaks a sentence; `warns` names the warnings it gives, `loud` overrules the volume that was set. */
  say(words: string, warns: string[] = [], loud = false): void {
    if (this.state.job) this.add({ type: "said", words, warns })
    this.says.push({ do: "say", words, ...(loud && { loud }) })
  }

  prefer(preferences: Preferences): void {
    this.settings.push({ do: "prefer", preferences })
  }

  alarm(on: boolean): void {
    this.settings.push({ do: "alarm", on })
  }

  /** For the hands of the page: a screen to be shown, a file to be saved. */
  have(done: Extract<Effect, { do: "show" | "save" }>): void {
    this.settings.push(done)
  }

  /** The job is put away; nothing is added to its log after that. */
  leave(): void {
    this.isLeaving = true
    this.put({ type: "put_away" })
    this.set({ job: null, question: null, readBack: null, doubt: null })
  }

  check(): void {
    this.set({ checked: this.tools.check(toSituation(this.state.record, assumedInstrument)) })
  }

  fact(entry: string): RecordedFact | undefined {
    return this.state.record.entries.find((held) => held.entry === entry)?.fact
  }

  finish(extra: readonly Effect[] = []): { state: DialogueState; effects: Effect[] } {
    const lastSentences = this.says.map((one) => one.words)
    if (lastSentences.length > 0) this.set({ lastSaid: lastSentences.join(" "), lastSentences })
    const append: Effect[] = this.lines.length > 0 ? [{ do: "append", lines: this.lines }] : []
    const expect: Effect = { do: "expect", context: contextOf(this.state, this.at) }
    const leave: Effect[] = this.isLeaving ? [{ do: "leave" }] : []
    const effects = [...append, ...extra, ...this.settings, ...this.sounds, ...this.says, ...leave, expect]
    return { state: this.state, effects }
  }
}
