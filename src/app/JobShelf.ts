/** What goes out of the store and into it at the worker's wish, with what came of it on the notice board. */
import type { DialogueState } from "../dialogue/DialogueState"
import type { Store } from "../record/Store"
import { saveAll, saveJob, takeInFile } from "./jobFiles"
import type { NoticeBoard } from "./NoticeBoard"
import { reportOf } from "./reportOf"

export class JobShelf {
  constructor(
    private readonly store: Store,
    private readonly board: NoticeBoard,
    private readonly now: () => string,
  ) {}

  async saveJob({ record }: DialogueState): Promise<void> {
    const { job, place, openedAt } = record
    if (job) await saveJob(this.store, { job, place, openedAt: openedAt ?? this.now() })
  }

  async saveReport(state: DialogueState): Promise<void> {
    if (!state.job) return
    await reportOf(this.store, state.job, state).catch(() =>
      this.board.put("trouble", "The report could not be made. Save the job file, and try again later."),
    )
  }

  async saveAll(): Promise<void> {
    const saved = await saveAll(this.store, this.now().slice(0, 10))
    if (saved.ok) this.board.put("news", `All jobs were handed over as one file: ${saved.value}.`)
    else this.board.put("trouble", saved.because)
  }

  async takeIn(file: File): Promise<void> {
    for (const { ok, words } of await takeInFile(this.store, file, this.now()))
      this.board.put(ok ? "news" : "trouble", words)
  }
}
