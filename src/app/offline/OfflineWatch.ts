/** Collects what the worker should know about storage and versions, as notices beside the session's own. */
import type { Notice, SessionView } from "../Session"
import { askToKeep, fewBytes, freeBytes, isKept, type StorageAsked } from "./storageCare"

interface OwnNotice extends Notice {
  /** On the start page alone, or during a job as well. */
  shown: "start" | "always"
}

const newer: OwnNotice = {
  id: "offline.newer",
  kind: "news",
  words: "A newer version is ready; it is used once every window of this app is closed and it is opened again.",
  shown: "always",
}
const notKept: OwnNotice = {
  id: "offline.notKept",
  kind: "news",
  words: "This page could not be kept for use without a network. It tries again at the next start.",
  shown: "start",
}
const mayClear: OwnNotice = {
  id: "offline.mayClear",
  kind: "news",
  words: "This browser may clear what is stored here when it runs short of room. Keep a job file of every job.",
  shown: "start",
}
const littleRoom: OwnNotice = {
  id: "offline.littleRoom",
  kind: "trouble",
  words: "There is little room left on this device. Make some, or a job may not be saved to its end.",
  shown: "start",
}

export class OfflineWatch {
  private readonly listeners = new Set<() => void>()
  private readonly dismissed = new Set<string>()
  private all: readonly OwnNotice[] = []
  private inJob: readonly OwnNotice[] = []
  private asked = false

  constructor(private readonly storage: StorageAsked | undefined) {}

  subscribe(changed: () => void): () => void {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  /** The same array until something changes. */
  notices(phase: SessionView["phase"]): readonly Notice[] {
    return phase === "start" ? this.all : this.inJob
  }

  /** Once, when the stored jobs are known. `hasJobs`: something is stored that could be lost. */
  async lookAtStorage(hasJobs: boolean): Promise<void> {
    const free = await freeBytes(this.storage)
    if (free !== null && free < fewBytes) this.add(littleRoom)
    if (!(await isKept(this.storage)) && hasJobs) this.add(mayClear)
  }

  /** When a job is opened; the browser is asked once a visit, since some ask the worker in turn. */
  async keepJobs(): Promise<void> {
    if (this.asked) return
    this.asked = true
    if (!(await askToKeep(this.storage))) this.add(mayClear)
  }

  newerReady(): void {
    this.add(newer)
  }

  notKept(): void {
    this.add(notKept)
  }

  /** False where the notice is not one of ours. */
  dismiss(id: string): boolean {
    if (!this.all.some((one) => one.id === id)) return false
    this.dismissed.add(id)
    this.set(this.all.filter((one) => one.id !== id))
    return true
  }

  private add(notice: OwnNotice): void {
    if (this.dismissed.has(notice.id) || this.all.includes(notice)) return
    this.set([...this.all, notice])
  }

  private set(all: readonly OwnNotice[]): void {
    this.all = all
    this.inJob = all.filter((one) => one.shown === "always")
    for (const changed of this.listeners) changed()
  }
}
