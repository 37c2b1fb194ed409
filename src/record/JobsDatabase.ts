/**
 * The tables of this device's database, for the logs and for the sound beside them. It asks for strict durability:
 * without it, Chromium answers before the lines have left the operating system's cache, and a power cut could still take
 * a value that was read back as done.
 */
import Dexie, { type Table } from "dexie"
import type { ClipNote } from "./Clip"
import type { JobRow } from "./JobRow"
import type { LogLine } from "./LogLine"
import type { Source } from "./Source"

/** A row with the version of what made it; `row` is null where none could be made. */
export interface StoredRow {
  job: string
  version: string
  row: JobRow | null
}

/** The name of the page's own database. */
export const pageDatabase = "bothhands"

export class JobsDatabase extends Dexie {
  lines!: Table<LogLine, string>
  rows!: Table<StoredRow, string>
  sources!: Table<Source, string>
  clips!: Table<ClipNote, [string, string]>
  /** The bytes of each clip, apart, so that looking through the clips reads no sound. */
  sounds!: Table<{ job: string; heard: string; sound: Uint8Array }, [string, string]>
  constructor(name: string) {
    super(name, { chromeTransactionDurability: "strict" })
    this.version(1).stores({ lines: "id, job, &[job+seq]" })
    // The rows of what is there already are left to be made later: an upgrade must not read every log there is.
    this.version(2)
      .stores({ rows: "job", sources: "id, job" })
      .upgrade(async (old) => {
        const jobs = (await old.table("lines").orderBy("job").uniqueKeys()) as string[]
        await old.table("rows").bulkAdd(jobs.map((job) => ({ job, version: "", row: null })))
      })
    this.version(3).stores({ clips: "[job+heard], at", sounds: "[job+heard]" })
    this.version(4).stores({ rows: "job, row.openedAt" })
  }
}

/** Frees some room on a full device; false where there is nothing left to give up. */
export type MakeRoom = (database: JobsDatabase) => Promise<boolean>

/** Whether a write failed since the device is full. */
export const isFull = (error: unknown): boolean => errorNames(error).includes("QuotaExceededError")

/** The name of an error and of the one inside it. */
export const errorNames = (error: unknown): string[] =>
  [error, (error as { inner?: unknown }).inner].map((one) => (one as Error | undefined)?.name ?? "")
