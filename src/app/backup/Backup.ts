/**
 * Copies each job to a folder of the worker's choice, by itself, soon after its lines are stored. It only reads the store
 * and only ever speaks up as a notice: a folder that is full, gone or forbidden holds up no job.
 */
import type { Store } from "../../record/Store"
import { summarise } from "../../record/summarise"
import { jobFileName, jobText } from "../jobFiles"
import { askToWrite, type BackupFolder, mayWrite, writeToFolder } from "./BackupFolder"
import { type BackupState, type Copies, noBackup } from "./BackupState"

export interface BackupParts {
  store: Store
  /** Asks the worker for a folder; null where the browser cannot. Rejects where he chose none. */
  pick: (() => Promise<BackupFolder>) | null
  /** Where the choice outlives the page. */
  place: { read(): Promise<BackupFolder | null>; write(folder: BackupFolder | null): Promise<void> }
  now(): string
  later(act: () => void, ms: number): void
  /** The words are for the worker. */
  trouble(because: string): void
}

/** From the first new line to its copy: a breath or two of work goes into one writing (our choice, no source). */
export const copyAfterMs = 1500

export class Backup implements Copies {
  private readonly listeners = new Set<() => void>()
  private state: BackupState
  private folder: BackupFolder | null = null
  private readonly waiting = new Set<string>()
  private isPlanned = false
  private writing: Promise<void> = Promise.resolve()

  constructor(private readonly parts: BackupParts) {
    this.state = parts.pick ? { ...noBackup, at: "off" } : noBackup
    if (parts.pick) void this.open()
  }

  snapshot = (): BackupState => this.state

  subscribe = (changed: () => void): void => {
    this.listeners.add(changed)
  }

  choose = (): void => {
    void this.parts
      .pick?.()
      .then((folder) => this.take(folder))
      .catch(() => undefined)
  }

  wake = (): void => {
    const { folder } = this
    if (this.state.at !== "asleep" || !folder) return
    void askToWrite(folder).then((may) => {
      if (!may || this.folder !== folder) return
      this.set({ at: "on" })
      void this.write()
    })
  }

  stop = (): void => {
    this.folder = null
    this.waiting.clear()
    this.set({ ...noBackup, at: "off" })
    void this.parts.place.write(null).catch(() => undefined)
  }

  grew(job: string): void {
    if (!this.folder) return
    this.waiting.add(job)
    if (this.isPlanned) return
    this.isPlanned = true
    this.parts.later(() => void this.write(), copyAfterMs)
  }

  /** Copies now what waits; resolves once it is written, or was refused. */
  write(): Promise<void> {
    this.isPlanned = false
    this.writing = this.writing.then(() => this.writeWaiting())
    return this.writing
  }

  private async open(): Promise<void> {
    const folder = await this.parts.place.read().catch(() => null)
    if (!folder || this.folder) return
    this.folder = folder
    this.set({ at: (await mayWrite(folder)) ? "on" : "asleep", folder: folder.name })
  }

  private async take(folder: BackupFolder): Promise<void> {
    this.folder = folder
    this.set({ ...noBackup, at: "on", folder: folder.name })
    // A browser that keeps no choice asks for it again at the next visit, which is all that is lost.
    await this.parts.place.write(folder).catch(() => undefined)
    for (const { job } of await this.parts.store.jobs()) this.waiting.add(job)
    await this.write()
  }

  private async writeWaiting(): Promise<void> {
    const { folder } = this
    if (!folder || this.state.at === "asleep") return
    for (const job of [...this.waiting]) {
      this.waiting.delete(job)
      const because = await this.copy(folder, job)
      if (this.folder !== folder) return
      if (because === null) this.set({ at: "on", savedAt: this.parts.now(), because: "" })
      else this.fail(job, because)
    }
  }

  /** Null when it was written, else why not. */
  private async copy(folder: BackupFolder, job: string): Promise<string | null> {
    try {
      const { lines } = await this.parts.store.read(job)
      const summary = summarise(lines)
      if (!summary) return null
      const written = await writeToFolder(folder, jobFileName(summary), await jobText(this.parts.store, job))
      return written.ok ? null : written.because
    } catch {
      return "the job could not be read"
    }
  }

  /** The job waits for its next line to be tried again. */
  private fail(job: string, because: string): void {
    this.waiting.add(job)
    if (this.state.at !== "failed")
      this.parts.trouble(
        `The copy in the folder ${this.state.folder} could not be written: ${because}. The job itself is stored on this device.`,
      )
    this.set({ at: "failed", because })
  }

  private set(change: Partial<BackupState>): void {
    this.state = { ...this.state, ...change }
    for (const changed of this.listeners) changed()
  }
}
