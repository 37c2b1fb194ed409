/**
 * The session before what knows the trade is here: it lists the jobs out of the store, so that the start page can be
 * used at once, and hands everything else on. A tap is used to wake the voice when it is made, since the browser lets
 * nothing sound later.
 */
import { emptyDialogue } from "../dialogue/emptyDialogue"
import type { JobSummary, Store } from "../record/Store"
import type { Speaker } from "../speech/Speaker"
import { noBackup } from "./backup/BackupState"
import type { Session, SessionView } from "./Session"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import type { SoundShelf } from "./sound/SoundShelf"

export interface EarlyParts {
  store: Store
  speaker: Speaker
  settings: SettingsKeeper
  /** Fetches the rest. Rejects where it could not be had. */
  load(): Promise<Session>
}

const viewOf = (phase: SessionView["phase"], jobs: readonly JobSummary[], failed: boolean): SessionView => ({
  phase,
  dialogue: emptyDialogue(""),
  ear: { state: "stopped", loading: null, level: 0, name: "" },
  voice: { saying: null, name: null },
  spoken: [],
  heard: {},
  jobs,
  alarm: false,
  follows: false,
  backup: noBackup,
  notices: failed
    ? [
        {
          id: "early.failed",
          kind: "trouble",
          words: "The app could not be loaded to its end. Stored jobs are untouched. Load the page again.",
        },
      ]
    : [],
})

class EarlySession implements Session {
  readonly settings: SettingsKeeper
  readonly backup: Session["backup"] = {
    choose: () => this.hand((session) => session.backup.choose()),
    wake: () => this.hand((session) => session.backup.wake()),
    stop: () => this.hand((session) => session.backup.stop()),
  }
  readonly sound: SoundShelf = {
    sum: () => this.rest.then(({ sound }) => sound.sum()),
    clear: () => this.rest.then(({ sound }) => sound.clear()),
  }
  private readonly listeners = new Set<() => void>()
  private readonly rest: Promise<Session>
  private session: Session | null = null
  private view = viewOf("loading", [], false)

  constructor(private readonly parts: EarlyParts) {
    this.settings = parts.settings
    this.rest = this.begin()
    this.rest.catch(() => this.show(viewOf("start", this.view.jobs, true)))
  }

  subscribe = (changed: () => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  /** The later session is shown once it has looked round as well. */
  snapshot = (): SessionView => {
    const later = this.session?.snapshot()
    return later && later.phase !== "loading" ? later : this.view
  }

  send: Session["send"] = (event) => this.hand((session) => session.send(event))
  type: Session["type"] = (words) => this.hand((session) => session.type(words))
  newJob: Session["newJob"] = (place) => this.tapped((session) => session.newJob(place))
  resumeJob: Session["resumeJob"] = (job) => this.tapped((session) => session.resumeJob(job))
  startLesson: Session["startLesson"] = () => {
    void this.parts.speaker.prepare()
    return this.rest.then((session) => session.startLesson())
  }
  startLearning: Session["startLearning"] = () => this.rest.then((session) => session.startLearning())
  closeJob: Session["closeJob"] = () => this.hand((session) => session.closeJob())
  listen: Session["listen"] = (on) => this.tapped((session) => session.listen(on))
  hearSample: Session["hearSample"] = () => this.tapped((session) => session.hearSample())
  saveJobFile: Session["saveJobFile"] = () => this.hand((session) => session.saveJobFile())
  saveReport: Session["saveReport"] = () => this.hand((session) => session.saveReport())
  share: Session["share"] = (what) => this.hand((session) => session.share(what))
  saveAllJobs: Session["saveAllJobs"] = () => this.hand((session) => session.saveAllJobs())
  openJobFile: Session["openJobFile"] = (file) => this.hand((session) => session.openJobFile(file))
  prompt: Session["prompt"] = (words, shown) => this.hand((session) => session.prompt(words, shown))
  takeOver: Session["takeOver"] = () => this.tapped((session) => session.takeOver())
  dismiss: Session["dismiss"] = (notice) => this.hand((session) => session.dismiss(notice))

  /** The jobs first: their list is what the start page waits for. */
  private async begin(): Promise<Session> {
    const jobs = await this.parts.store.jobs().catch(() => [])
    if (!jobs.some((one) => one.inHand)) this.show(viewOf("start", jobs, false))
    const session = await this.parts.load()
    session.subscribe(() => this.changed())
    this.session = session
    this.changed()
    return session
  }

  private hand(act: (session: Session) => void): void {
    if (this.session) return act(this.session)
    this.rest.then(act, () => undefined)
  }

  private tapped(act: (session: Session) => void): void {
    if (!this.session) {
      void this.parts.speaker.prepare()
      this.show({ ...this.view, phase: "loading" })
    }
    this.hand(act)
  }

  private show(view: SessionView): void {
    this.view = view
    this.changed()
  }

  private changed(): void {
    for (const listener of this.listeners) listener()
  }
}

/** Starts at once with reading what is stored. */
export const createEarlySession = (parts: EarlyParts): Session => new EarlySession(parts)
