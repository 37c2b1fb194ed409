/** A session out of its parts: the loop, the voice, the ear and the store behind one snapshot for the screen. */
import { v7 } from "uuid"
import type { Checked } from "../facts/Finding"
import type { Heard } from "../facts/Heard"
import type { JobRecord } from "../record/JobRecord"
import { readJobFile, writeJobFile } from "../record/jobFile"
import type { LogLine } from "../record/LogLine"
import type { JobSummary } from "../record/Store"
import { openWarnings } from "../record/warningKey"
import { Ear } from "./Ear"
import { HalfDuplex } from "./HalfDuplex"
import { Loop } from "./Loop"
import type { Parts } from "./Parts"
import type { Notice, Session, SessionView } from "./Session"
import { saveText } from "./saveText"

class LiveSession implements Session {
  private readonly listeners = new Set<() => void>()
  private readonly voice: HalfDuplex
  private readonly ear: Ear
  private readonly loop: Loop
  private phase: SessionView["phase"] = "loading"
  private saying: string | null = null
  private spoken: string[] = []
  private heard: Record<string, Heard> = {}
  private jobs: JobSummary[] = []
  private notices: Notice[] = []
  private view: SessionView | null = null

  constructor(private readonly parts: Parts) {
    const trouble = (because: string) => this.notify("trouble", because)
    const changed = () => this.changed()
    const stumbled = (because: string) =>
      void this.voice.speak([
        { do: "sound", sound: "sayAgain" },
        { do: "say", words: because },
      ])
    this.ear = new Ear({ changed, trouble, stumbled, heard: (heard) => this.take(heard) })
    this.voice = new HalfDuplex(parts.speaker, {
      trouble,
      saying: (words) => this.hearMyself(words),
      deafen: () => this.ear.deafen(),
      undeafen: (marginMs) => this.ear.undeafen(marginMs),
    })
    const expect = (effect: { context: Parameters<Parts["earGrammar"]>[0] }) =>
      void this.ear.expect(parts.earGrammar(effect.context))
    this.loop = new Loop(parts, this.voice, { changed, trouble, expect })
    void this.wakeUp()
  }

  subscribe = (changed: () => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  snapshot = (): SessionView => {
    this.view ??= {
      phase: this.phase,
      dialogue: this.loop.state,
      ear: {
        state: this.ear.state,
        loading: this.ear.starting ? 0 : null,
        level: this.ear.level,
        name: this.parts.earName,
      },
      voice: { saying: this.saying, name: this.voice.ready ? this.parts.voiceName() : null },
      spoken: this.spoken,
      heard: this.heard,
      jobs: this.jobs,
      notices: this.notices,
    }
    return this.view
  }

  send: Session["send"] = (event) => void this.loop.take(event)

  type: Session["type"] = (words) => {
    const at = performance.now() / 1000
    const heard: Heard = {
      id: v7(),
      text: words,
      alternatives: [],
      words: [],
      start: at,
      end: at,
      engine: "typed",
      margin: null,
    }
    this.take(heard)
  }

  newJob: Session["newJob"] = (place) => {
    // The ear pack loads while the opening words are spoken; the microphone opens after them.
    void this.parts.microphone.prepare(this.parts.earGrammar({}))
    void this.open(place).then(() => this.startEar(this.parts.microphone))
  }

  resumeJob: Session["resumeJob"] = (job) =>
    void this.voice.wake().then(async () => {
      await this.resume(job)
      await this.startEar(this.parts.microphone)
    })

  closeJob: Session["closeJob"] = () => {
    void this.ear.stop()
    void this.loop.take({ type: "left" }).then(() => {
      this.loop.close()
      this.spoken = []
      this.heard = {}
      this.phase = "start"
      void this.readJobs()
    })
  }

  listen: Session["listen"] = (on) => {
    if (!on) return void this.ear.stop()
    void this.voice.wake().then(() => this.startEar(this.parts.microphone))
  }

  hearSample: Session["hearSample"] = () => {
    const { sample } = this.parts
    if (!sample) return this.notify("trouble", "There is no sample recording in this build.")
    const ended = () => this.notify("news", "The recording has ended. The job is yours to look at.")
    void this.open("The bakery, a spoken sample").then(async () => this.startEar(await sample(ended)))
  }

  saveJobFile: Session["saveJobFile"] = () => {
    const { job } = this.loop.state
    if (!job) return
    void this.parts.store.read(job).then(({ lines }) => saveText(`${job}.bothhands.jsonl`, writeJobFile(lines)))
  }

  saveReport: Session["saveReport"] = () => {
    const { record, checked } = this.loop.state
    if (record.job) void this.makeReport(record.job, record, checked)
  }

  openJobFile: Session["openJobFile"] = (file) => void this.takeIn(file)

  dismiss: Session["dismiss"] = (notice) => {
    this.notices = this.notices.filter((one) => one.id !== notice)
    this.changed()
  }

  private async wakeUp(): Promise<void> {
    await this.readJobs()
    // The log itself says which job was in hand: it outlives a killed browser, as a setting kept beside it does not.
    const inHand = this.jobs.find((one) => one.inHand)
    if (inHand) await this.resume(inHand.job)
    else this.phase = "start"
    this.changed()
  }

  private async readJobs(): Promise<void> {
    try {
      this.jobs = await this.parts.store.jobs()
    } catch {
      this.notify("trouble", "The stored jobs could not be read. New jobs can still be opened.")
    }
    this.changed()
  }

  private async open(place: string): Promise<void> {
    await this.voice.wake()
    const job = v7()
    this.phase = "job"
    this.spoken = []
    this.heard = {}
    await this.loop.take({ type: "opened", job, place, pack: this.parts.pack })
    await this.voice.idle()
  }

  private async resume(job: string): Promise<void> {
    const { lines, damaged } = await this.parts.store.read(job)
    this.phase = "job"
    this.remember(lines)
    if (damaged > 0)
      this.notify("trouble", `${damaged} stored lines of this job could not be read; all others are here.`)
    await this.loop.take({ type: "resumed", lines })
  }

  private remember(lines: readonly LogLine[]): void {
    this.heard = Object.fromEntries(
      lines.flatMap((line) => (line.type === "heard" ? [[line.heard.id, line.heard]] : [])),
    )
    this.spoken = lines.flatMap((line) => (line.type === "said" ? [line.words] : []))
  }

  private async startEar(listener: Parts["microphone"]): Promise<void> {
    const { item } = this.loop.state
    const started = await this.ear.start(listener, this.parts.earGrammar(item ? { item } : {}))
    if (started) await this.voice.speak([{ do: "sound", sound: "listening" }])
  }

  private take(heard: Heard): void {
    if (this.phase !== "job") return
    this.heard = { ...this.heard, [heard.id]: heard }
    void this.loop.take({ type: "heard", heard })
  }

  private async takeIn(file: File): Promise<void> {
    const read = readJobFile(await file.text())
    if (!read.ok) return this.notify("trouble", `${file.name}: ${read.because}`)
    const stored = await this.parts.store.append(read.value.lines)
    if (!stored.ok) return this.notify("trouble", `${file.name}: ${stored.because}`)
    const faults = read.value.faults.join(" ")
    this.notify(
      faults ? "trouble" : "news",
      `${file.name}: ${read.value.lines.length} lines taken in. ${faults}`.trim(),
    )
    await this.readJobs()
  }

  private hearMyself(words: string | null): void {
    this.saying = words
    if (words) this.spoken = [...this.spoken, words]
    this.changed()
  }

  private async makeReport(job: string, record: JobRecord, { findings, missing }: Checked): Promise<void> {
    try {
      const [{ lines, damaged }, sources] = await Promise.all([
        this.parts.store.read(job),
        this.parts.store.sources(job),
      ])
      const lost = damaged > 0 ? [`${damaged} stored lines could not be read.`] : []
      const faults = [...sources.flatMap((source) => source.faults), ...lost]
      const { saveReport } = await import("./saveReport")
      await saveReport({ lines, record, findings, open: openWarnings(record, findings), missing, faults })
    } catch {
      this.notify("trouble", "The report could not be made. Save the job file, and try again later.")
    }
  }

  private notify(kind: Notice["kind"], words: string): void {
    if (this.notices.some((one) => one.words === words)) return
    this.notices = [...this.notices, { id: v7(), kind, words }]
    this.changed()
  }

  private changed(): void {
    this.view = null
    for (const listener of this.listeners) listener()
  }
}

/** Starts at once with reading what is stored. */
export const createSessionOf = (parts: Parts): Session => new LiveSession(parts)
