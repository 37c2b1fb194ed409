/** What goes out of the store and into it at the worker's wish, with what came of it on the notice board. */
import type { DialogueState } from "../dialogue/DialogueState"
import type { JobSummary, Store } from "../record/Store"
import { jobFile, saveAll, saveJob, takeInFile } from "./jobFiles"
import type { NoticeBoard } from "./NoticeBoard"
import { reportOf } from "./reportOf"
import { type SharedFile, Sharing } from "./Sharing"
import { saveFile } from "./saveText"

const noReport = "The report could not be made. Save the job file, and try again later."

export class JobShelf {
  /** As they were last read. */
  jobs: JobSummary[] = []
  private readonly sharing = new Sharing()

  constructor(
    private readonly store: Store,
    private readonly board: NoticeBoard,
    private readonly hooks: { now(): string; changed(): void },
  ) {}

  async readJobs(): Promise<void> {
    try {
      this.jobs = await this.store.jobs()
    } catch {
      this.board.put("trouble", "The stored jobs could not be read. New jobs can still be opened.")
    }
    this.hooks.changed()
  }

  async saveJob({ record }: DialogueState): Promise<void> {
    if (record.job) await saveJob(this.store, this.nameOf(record.job, record))
  }

  async saveReport(state: DialogueState): Promise<void> {
    if (!state.job) return
    await reportOf(this.store, state.job, state).then(saveFile, () => this.board.put("trouble", noReport))
  }

  /** Opens the device's share sheet. That somebody shuts it is no trouble. */
  async share(what: SharedFile, state: DialogueState): Promise<void> {
    const { job, record } = state
    if (!job) return
    const make = () =>
      what === "report" ? reportOf(this.store, job, state) : jobFile(this.store, this.nameOf(job, record))
    try {
      const shared = await this.sharing.share(`${what} ${job} ${record.nextSeq}`, make)
      if (shared === "press again") this.board.put("news", `The ${what} is ready. Press Share once more.`)
      if (shared === "refused")
        this.board.put("trouble", `This browser does not hand over the ${what}. Save it instead.`)
    } catch {
      this.board.put("trouble", what === "report" ? noReport : "The job file could not be made. Try again.")
    }
  }

  private nameOf(job: string, { place, openedAt }: DialogueState["record"]) {
    return { job, place, openedAt: openedAt ?? this.hooks.now() }
  }

  async saveAll(): Promise<void> {
    const saved = await saveAll(this.store, this.hooks.now().slice(0, 10))
    if (saved.ok) this.board.put("news", `All jobs were handed over as one file: ${saved.value}.`)
    else this.board.put("trouble", saved.because)
  }

  async takeIn(file: File): Promise<void> {
    for (const { ok, words } of await takeInFile(this.store, file, this.hooks.now()))
      this.board.put(ok ? "news" : "trouble", words)
  }
}
