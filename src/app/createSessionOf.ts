/** A session out of its parts: the loop, the voice, the ear and the store behind one snapshot for the screen. */
import { v7 } from "uuid"
import type { Heard } from "../facts/Heard"
import { typedHeard } from "../facts/typedHeard"
import { AlarmBell } from "./AlarmBell"
import { type Copies, noCopies } from "./backup/BackupState"
import { createTalk } from "./createTalk"
import { type LeadHooks, leadAlone, type Role } from "./device/JobLead"
import type { Ear } from "./Ear"
import type { HalfDuplex } from "./HalfDuplex"
import { JobShelf } from "./JobShelf"
import { JobWords } from "./JobWords"
import { Loop } from "./Loop"
import { createLessonStore } from "./lesson/lessonStore"
import { NoticeBoard } from "./NoticeBoard"
import type { Parts } from "./Parts"
import type { Session, SessionView } from "./Session"
import { preferenceKeys, preferencesOf } from "./settings/Settings"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import type { SoundShelf } from "./sound/SoundShelf"

class LiveSession implements Session {
  readonly settings: SettingsKeeper
  readonly backup: Copies
  readonly sound: SoundShelf
  private readonly listeners = new Set<() => void>()
  private readonly voice: HalfDuplex
  private readonly ear: Ear
  private readonly loop: Loop
  private phase: SessionView["phase"] = "loading"
  private saying: string | null = null
  private words = new JobWords()
  private readonly board = new NoticeBoard(() => this.changed())
  private readonly shelf: JobShelf
  private view: SessionView | null = null
  private readonly bell = new AlarmBell(() => void this.voice.speak([{ do: "sound", sound: "warning" }]))
  private role: Role = "leads"

  constructor(private readonly parts: Parts) {
    this.settings = parts.settings
    this.sound = parts.sound
    this.shelf = new JobShelf(parts.store, this.board, { now: parts.now, changed: () => this.changed() })
    const trouble = (because: string) => this.board.put("trouble", because)
    const changed = () => this.changed()
    this.backup = parts.backup?.(trouble) ?? noCopies
    this.backup.subscribe(changed)
    const { ear, voice } = createTalk(parts, {
      changed,
      trouble,
      heard: (heard) => this.take(heard),
      saying: (words) => this.hearMyself(words),
    })
    this.ear = ear
    this.voice = voice
    this.loop = new Loop(parts, this.voice, {
      changed,
      trouble,
      expect: ({ context }) => void this.ear.expect(() => parts.earGrammar(context)),
      prefer: (preferences) => this.settings.change(preferences),
      alarm: (on) => this.soundAlarm(on),
      show: parts.show,
      save: (what) => (what === "report" ? this.saveReport() : this.saveJobFile()),
      leave: () => this.putAway(),
      stored: (lines) => {
        parts.lead.grew()
        this.backup.grew(lines[0]!.job)
        parts.keeper?.keep(lines)
      },
    })
    this.settings.subscribe(() => this.followSettings())
    parts.watch?.((jobs) => {
      if (this.role === "leads") for (const job of jobs) void this.loop.catchUp(job).then(() => this.backup.grew(job))
    })
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
        name: this.parts.earName(),
      },
      voice: { saying: this.saying, name: this.voice.ready ? this.parts.voiceName() : null },
      spoken: this.words.spoken,
      heard: this.words.heard,
      jobs: this.shelf.jobs,
      alarm: this.bell.rings,
      follows: this.role === "follows",
      backup: this.backup.snapshot(),
      notices: this.board.all,
    }
    return this.view
  }

  send: Session["send"] = (event) => {
    if (this.role === "leads") void this.loop.take(event)
  }

  type: Session["type"] = (words) => this.take(typedHeard(v7(), words, performance.now() / 1000))

  newJob: Session["newJob"] = (place) => {
    // The ear pack loads while the opening words are spoken; the microphone opens after them.
    this.readyEar()
    this.backup.wake()
    void this.open(place).then(() => this.startEar(this.parts.microphone))
  }

  resumeJob: Session["resumeJob"] = (job) => {
    this.backup.wake()
    void this.voice.wake().then(async () => {
      await this.resume(job)
      if (this.role === "leads") await this.startEar(this.parts.microphone)
    })
  }

  takeOver: Session["takeOver"] = () => {
    void this.voice.wake()
    this.parts.lead.ask()
  }

  startLesson: Session["startLesson"] = async () => {
    void this.voice.wake()
    const store = await createLessonStore(this.parts.now())
    const practice = { store, lead: leadAlone, sample: null, backup: undefined, keeper: null, isPractice: true }
    return new LiveSession({ ...this.parts, ...practice })
  }

  startLearning: Session["startLearning"] = async () => this.parts.createLearner()

  closeJob: Session["closeJob"] = () => {
    if (this.role === "follows") return this.putAway()
    void this.ear.stop()
    void this.loop.take({ type: "left" }).then(() => this.putAway())
  }

  listen: Session["listen"] = (on) => {
    if (!on) return void this.ear.stop()
    this.backup.wake()
    // Both wait for the device, and nothing is spoken before both are there.
    const woken = this.voice.wake()
    void this.startEar(this.parts.microphone, woken)
  }

  hearSample: Session["hearSample"] = () => {
    const { sample } = this.parts
    if (!sample) return this.board.put("trouble", "There is no sample recording in this build.")
    const ended = () => this.board.put("news", "The recording has ended. The job is yours to look at.")
    void this.open("The bakery, a spoken sample").then(async () => this.startEar(await sample(ended)))
  }

  saveJobFile: Session["saveJobFile"] = () => void this.shelf.saveJob(this.loop.state)
  saveReport: Session["saveReport"] = () => void this.shelf.saveReport(this.loop.state)
  share: Session["share"] = (what) => void this.shelf.share(what, this.loop.state)
  saveAllJobs: Session["saveAllJobs"] = () => void this.shelf.saveAll()
  openJobFile: Session["openJobFile"] = (file) => void this.shelf.takeIn(file).then(() => this.shelf.readJobs())

  prompt: Session["prompt"] = (words, shown = false) => {
    if (shown) this.board.put("news", words)
    void this.voice.prompt(words)
  }

  dismiss: Session["dismiss"] = (notice) => this.board.take(notice)

  private async wakeUp(): Promise<void> {
    await this.shelf.readJobs()
    // The log itself says which job was in hand: it outlives a killed browser, as a setting kept beside it does not.
    const inHand = this.parts.isPractice ? undefined : this.shelf.jobs.find((one) => one.inHand)
    if (inHand) await this.resume(inHand.job)
    else if (this.phase === "loading") this.phase = "start"
    this.changed()
    // Behind the first picture of the job: reading the grammars takes as long as drawing it.
    if (this.parts.isEarHere) setTimeout(() => this.ear.isOn || this.readyEar())
  }

  /** Has the ear load its pack and take a grammar; no microphone is opened. */
  private readyEar(): void {
    const { item } = this.loop.state
    void this.parts.microphone.prepare(this.parts.earGrammar(item ? { item } : {}))
  }

  private async open(place: string): Promise<void> {
    await this.voice.wake()
    const job = v7()
    this.role = await this.parts.lead.join(job, this.leadHooks(job))
    this.phase = "job"
    this.words = new JobWords()
    await this.loop.take({ type: "opened", job, place, pack: this.parts.pack })
    await this.voice.idle()
  }

  private async resume(job: string): Promise<void> {
    this.role = await this.parts.lead.join(job, this.leadHooks(job))
    if (this.role === "leads") return this.lead(job)
    await this.follow(job)
  }

  private async lead(job: string): Promise<void> {
    const { lines, damaged } = await this.parts.store.read(job)
    this.phase = "job"
    this.words.remember(lines)
    if (damaged > 0)
      this.board.put("trouble", `${damaged} stored lines of this job could not be read; all others are here.`)
    await this.loop.take({ type: "resumed", lines })
  }

  /** Shows what another window writes; nothing is written or spoken here. */
  private async follow(job: string): Promise<void> {
    const { lines } = await this.parts.store.read(job)
    if (this.role !== "follows") return
    this.phase = "job"
    this.words.remember(lines)
    this.loop.follow(lines)
  }

  private leadHooks(job: string): LeadHooks {
    const yieldTo = () => {
      this.role = "follows"
      void this.ear.stop()
      this.soundAlarm(false)
      this.loop.close()
      void this.follow(job)
    }
    return {
      led: () => {
        this.role = "leads"
        void this.lead(job).then(() => (this.voice.ready ? this.startEar(this.parts.microphone) : undefined))
      },
      handOver: async () => {
        await this.loop.settled()
        yieldTo()
      },
      lost: yieldTo,
      grew: () => void this.follow(job),
    }
  }

  private async startEar(listener: Parts["microphone"], woken: Promise<boolean> | null = null): Promise<void> {
    const { item } = this.loop.state
    const started = await this.ear.start(listener, this.parts.earGrammar(item ? { item } : {}))
    await woken
    if (!started) return
    await this.voice.speak([{ do: "sound", sound: "listening" }])
    this.parts.expectWords?.()
  }

  private take(heard: Heard): void {
    if (this.phase !== "job" || this.role === "follows") return
    this.words.hear(heard)
    void this.loop.take({ type: "heard", heard }).then(() => this.parts.keeper?.forget(heard.id))
  }

  private putAway(): void {
    void this.ear.stop()
    this.parts.lead.leave()
    this.role = "leads"
    this.soundAlarm(false)
    this.loop.close()
    this.words = new JobWords()
    this.phase = "start"
    void this.shelf.readJobs()
  }

  /** Preferences may be changed by voice or on the screen; whichever it was, the other is told. */
  private followSettings(): void {
    const preferences = preferencesOf(this.settings.snapshot())
    const now = this.loop.state.preferences
    const isNew = preferenceKeys.some((key) => preferences[key] !== now[key])
    if (isNew && this.phase === "job" && this.role === "leads") void this.loop.take({ type: "preferred", preferences })
  }

  private soundAlarm(on: boolean): void {
    this.bell.ring(on)
    this.changed()
  }

  private hearMyself(words: string | null): void {
    this.saying = words
    if (words) this.words.speak(words)
    this.changed()
  }

  private changed(): void {
    this.view = null
    for (const listener of this.listeners) listener()
  }
}

/** Starts at once with reading what is stored. */
export const createSessionOf = (parts: Parts): Session => new LiveSession(parts)
