/**
 * A browser's recogniser that plays traces of what was reported from the field, on the test's clock. A trace is a row of
 * events with their times in ms; results are written as [isFinal, transcript, confidence, other readings].
 */
import type { Recognition } from "../../src/speech/recognitionSession"

export type Row = readonly [isFinal: boolean, transcript: string, confidence: number, others?: readonly string[]]
export type TraceEvent =
  | { t: number; ev: "start" | "audiostart" | "soundstart" | "speechstart" | "end" }
  | { t: number; ev: "error"; error: string }
  | { t: number; ev: "result"; results: readonly Row[] }

const handlerOf = {
  start: "onstart",
  audiostart: "onaudiostart",
  soundstart: "onsoundstart",
  speechstart: "onspeechstart",
  end: "onend",
} as const

/** What one browser does: each recogniser made plays the next trace at its start, and the last one from then on. */
export class FakeBrowser {
  readonly made: FakeRecognition[] = []
  constructor(private readonly traces: readonly (readonly TraceEvent[])[] = [[]]) {}

  readonly make = (): Recognition => {
    const one = new FakeRecognition(this.traces[Math.min(this.made.length, this.traces.length - 1)] ?? [])
    this.made.push(one)
    return one as unknown as Recognition
  }

  /** The one that is running, if any. */
  get running(): FakeRecognition | undefined {
    return this.made.findLast((one) => one.isRunning)
  }
}

export class FakeRecognition {
  lang = ""
  continuous = false
  interimResults = false
  maxAlternatives = 1
  isRunning = false
  /** Whether `stop` and `abort` bring an end, as they should. */
  obeys = true
  onstart: (() => void) | null = null
  onaudiostart: (() => void) | null = null
  onsoundstart: (() => void) | null = null
  onspeechstart: (() => void) | null = null
  onend: (() => void) | null = null
  onresult: ((event: unknown) => void) | null = null
  onerror: ((event: unknown) => void) | null = null

  constructor(private readonly trace: readonly TraceEvent[]) {}

  start(): void {
    if (this.isRunning) throw new DOMException("already started", "InvalidStateError")
    this.isRunning = true
    for (const event of this.trace) setTimeout(() => this.emit(event), event.t)
  }

  stop(): void {
    if (this.obeys && this.isRunning) setTimeout(() => this.emit({ t: 0, ev: "end" }), 100)
  }

  abort(): void {
    if (!this.obeys) return
    this.isRunning = false
  }

  emit(event: TraceEvent): void {
    if (event.ev === "end") this.isRunning = false
    if (event.ev === "error") this.onerror?.({ error: event.error })
    else if (event.ev === "result") this.onresult?.({ results: event.results.map(toResult) })
    else this[handlerOf[event.ev]]?.()
  }
}

const toResult = ([isFinal, transcript, confidence, others = []]: Row) =>
  Object.assign([{ transcript, confidence }, ...others.map((one) => ({ transcript: one, confidence: 0 }))], { isFinal })
