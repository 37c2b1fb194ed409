/**
 * One step of the loop while it is being worked out. It is changed in place inside the step and thrown away after it;
 * from outside, `step` stays pure. Whatever is said is also a line of the log, and lines always come before words.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Draft, LogLine } from "../record/LogLine"
import { applyLine } from "../record/project"
import { reopeningFor } from "../record/reopening"
import { assumedInstrument, toSituation } from "../record/toSituation"
import { contextOf } from "./contextOf"
import type { DialogueState } from "./DialogueState"
import type { Effect, SoundName } from "./Effect"
import type { Tools } from "./Tools"

export class Turn {
  readonly lines: LogLine[] = []
  /** Entries made since the turn last spoke, in order. */
  readonly written: string[] = []
  /** All entries of the turn that are read back and may be challenged. */
  readonly challengeable: string[] = []
  private readonly sounds: Effect[] = []
  private readonly says: Effect[] = []

  constructor(
    public state: DialogueState,
    readonly at: string,
    readonly tools: Tools,
  ) {}

  set(change: Partial<DialogueState>): void {
    this.state = { ...this.state, ...change }
  }

  /** Adds a line to the log and to the record, and gives its id. */
  add(draft: Draft): string {
    const reopening = reopeningFor(this.state.record, draft)
    if (reopening) this.add(reopening)
    const { job, device, by, record } = this.state
    const id = this.tools.newId()
    const line = { v: 1, id, job: job ?? "", at: this.at, by, device, seq: record.nextSeq, ...draft } as LogLine
    this.lines.push(line)
    this.set({ record: applyLine(record, line) })
    return id
  }

  sound(sound: SoundName): void {
    this.sounds.push({ do: "sound", sound })
  }

  /** Speaks a sentence; `warns` names the warnings it gives. */
  say(words: string, warns: string[] = []): void {
    if (this.state.job) this.add({ type: "said", words, warns })
    this.says.push({ do: "say", words })
  }

  /** Everything said in this turn, for "say again". */
  private sentences(): string[] {
    return this.says.flatMap((one) => (one.do === "say" ? [one.words] : []))
  }

  check(): void {
    this.set({ checked: this.tools.check(toSituation(this.state.record, assumedInstrument)) })
  }

  fact(entry: string): RecordedFact | undefined {
    return this.state.record.entries.find((held) => held.entry === entry)?.fact
  }

  finish(extra: readonly Effect[] = []): { state: DialogueState; effects: Effect[] } {
    const lastSentences = this.sentences()
    if (lastSentences.length > 0) this.set({ lastSaid: lastSentences.join(" "), lastSentences })
    const append: Effect[] = this.lines.length > 0 ? [{ do: "append", lines: this.lines }] : []
    const expect: Effect = { do: "expect", context: contextOf(this.state, this.at) }
    return { state: this.state, effects: [...append, ...extra, ...this.sounds, ...this.says, expect] }
  }
}
