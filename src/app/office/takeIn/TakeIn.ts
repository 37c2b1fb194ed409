/**
 * Files on their way in, one after the other. Stopping ends the worker at once; what was being read goes back in the line
 * and begins anew when it goes on, and what was stored before is passed over then.
 */
import type { Outcome } from "../../../facts/Outcome"
import type { Sound } from "../../../speech/readWav"
import { fileKind } from "./fileKind"
import { refusedFile, type TakenFile } from "./TakenFile"
import type { FromTaker, KeepOrder, ToTaker } from "./takeInMessages"

export interface NamedFile {
  name: string
  file: File
}

export interface TakeInView {
  state: "idle" | "working" | "stopped"
  /** The file in hand, and how much of it is done, 0 to 1. */
  now: { name: string; part: number } | null
  waiting: number
  taken: readonly TakenFile[]
}

/** The part of a worker that is used, so that tests can stand in for it. */
export type Taker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">

export interface TakeInParts {
  makeTaker(): Taker
  decode(file: File): Promise<Outcome<Sound>>
  /** Absolute address of the ear pack, with a slash at its end. */
  ear: string
  keep(): KeepOrder
  /** Jobs have been added. */
  added(): void
  /** So many clips gave way to lines. */
  dropped(clips: number): void
}

export class TakeIn {
  private view: TakeInView = { state: "idle", now: null, waiting: 0, taken: [] }
  private readonly listeners = new Set<() => void>()
  private waiting: NamedFile[] = []
  private taker: Taker | null = null
  private round = 0

  constructor(private readonly parts: TakeInParts) {}

  subscribe = (changed: () => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  snapshot = (): TakeInView => this.view

  add(files: readonly NamedFile[]): void {
    if (files.length === 0) return
    this.waiting.push(...files)
    this.show({ waiting: this.waiting.length })
    if (this.view.state !== "working") void this.work()
  }

  stop(): void {
    if (this.view.state !== "working") return
    this.round += 1
    this.taker?.terminate()
    this.taker = null
    this.show({ state: "stopped", now: null, waiting: this.waiting.length })
    this.parts.added()
  }

  goOn(): void {
    if (this.view.state === "stopped") void this.work()
  }

  /** Drops what is waiting and the list of what was done. */
  clear(): void {
    this.stop()
    this.waiting = []
    this.show({ state: "idle", now: null, waiting: 0, taken: [] })
  }

  private async work(): Promise<void> {
    const round = ++this.round
    this.show({ state: "working" })
    while (this.waiting.length > 0) {
      const next = this.waiting[0]!
      this.show({ now: { name: next.name, part: 0 }, waiting: this.waiting.length - 1 })
      const taken = await this.takeOne(next)
      if (round !== this.round) return
      this.waiting.shift()
      this.show({ taken: [...this.view.taken, ...taken] })
    }
    this.show({ state: "idle", now: null, waiting: 0 })
    this.parts.added()
  }

  private async takeOne({ name, file }: NamedFile): Promise<TakenFile[]> {
    const { round } = this
    const sound = fileKind(name) === "sound" ? await this.parts.decode(file) : undefined
    if (round !== this.round) return []
    this.taker ??= this.parts.makeTaker()
    const { taker } = this
    return new Promise((fulfil) => {
      taker.onmessage = ({ data }: MessageEvent<FromTaker>) => {
        if (data.tell === "taken") fulfil(data.taken)
        else if (data.tell === "dropped") this.parts.dropped(data.clips)
        else this.show({ now: { name, part: data.part } })
      }
      taker.onerror = (error) => {
        error.preventDefault?.()
        taker.terminate()
        this.taker = null
        fulfil([refusedFile(name, "It was too much for this browser, or it could not be read.")])
      }
      const message: ToTaker = { name, file, ear: this.parts.ear, keep: this.parts.keep(), ...(sound && { sound }) }
      taker.postMessage(message, sound?.ok ? [sound.value.samples.buffer] : [])
    })
  }

  private show(change: Partial<TakeInView>): void {
    this.view = { ...this.view, ...change }
    for (const listener of this.listeners) listener()
  }
}
