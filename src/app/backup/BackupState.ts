/** What the screen knows of the copies in a folder of the worker's, and what it may ask for. */

/** `missing`: this browser lets no page write to a folder. `asleep`: it has to be allowed again, from a tap. */
export interface BackupState {
  at: "missing" | "off" | "asleep" | "on" | "failed"
  /** Name of the folder; empty where there is none. */
  folder: string
  /** When a copy was last written in this visit, ISO 8601, or null. */
  savedAt: string | null
  /** Why the last copy failed; empty where it did not. */
  because: string
}

/** What a screen may ask of it. */
export interface BackupControl {
  /** From a tap: has the worker choose a folder, and copies every job to it. */
  choose(): void
  /** From a tap: has the browser allow the folder again, where it must be asked. */
  wake(): void
  /** No more copies. Those that were made stay. */
  stop(): void
}

/** As it is where nothing is known yet, or nothing can be had. */
export const noBackup: BackupState = { at: "missing", folder: "", savedAt: null, because: "" }

/** What the session does with it. */
export interface Copies extends BackupControl {
  /** The same object until something changes. */
  snapshot(): BackupState
  subscribe(changed: () => void): void
  /** A job has new lines on disk. Copied soon; the copy is never waited for. */
  grew(job: string): void
}

/** Where nothing is copied. */
export const noCopies: Copies = {
  choose: () => {},
  wake: () => {},
  stop: () => {},
  snapshot: () => noBackup,
  subscribe: () => {},
  grew: () => {},
}
