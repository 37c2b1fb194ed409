/** What holds on a job, computed from its log. It is never stored: the log is. */
import type { RecordedFact } from "../facts/Fact"
import type { Item } from "../facts/Item"
import type { AcceptedHow, Origin, SignedFinding } from "./LogLine"

/** One entry and what became of it. */
export interface Held {
  entry: string
  slot: string
  item: Item | null
  fact: RecordedFact
  at: string
  seq: number
  origin: Origin
  needsYes: boolean
  /** How it was accepted, or null while it waits for an answer. */
  accepted: AcceptedHow | null
  withdrawn: "denied" | "undone" | "started_over" | null
}

/** A warning that was spoken, and what the worker did with it. */
export interface SpokenWarning {
  warning: string
  said: string
  answered: string | null
  kept: string | null
}

/** Somebody's signature under the record as it stood. */
export interface Signature {
  at: string
  seq: number
  role: string
  name: string | null
  /** What stood open or was kept when it was signed; null where that was not written down. */
  findings: readonly SignedFinding[] | null
}

/** Why a signed job was opened again, and what had been signed. */
export interface Reopening {
  at: string
  seq: number
  by: string
  because: string
  signatures: readonly Signature[]
}

export interface JobRecord {
  job: string | null
  place: string
  pack: string
  openedAt: string | null
  lastAt: string | null
  /** Number of the next line on this device. */
  nextSeq: number
  /** Every entry ever made, in order. */
  entries: readonly Held[]
  /** Slot → entry ids in it, oldest first. */
  slots: Readonly<Record<string, readonly string[]>>
  /** Items in the order they were first named. */
  items: readonly Item[]
  warnings: readonly SpokenWarning[]
  /** The last of the signatures that hold. */
  signedOff: { at: string; role: string; undone: readonly string[] } | null
  /** Signatures that hold, one a role; a change takes all of them off. */
  signatures: readonly Signature[]
  reopenings: readonly Reopening[]
  /** Minutes between check-ins as last set and not stopped; null while they are off. */
  checkEveryMinutes: number | null
}

export const emptyRecord: JobRecord = {
  job: null,
  place: "",
  pack: "",
  openedAt: null,
  lastAt: null,
  nextSeq: 0,
  entries: [],
  slots: {},
  items: [],
  warnings: [],
  signedOff: null,
  checkEveryMinutes: null,
  signatures: [],
  reopenings: [],
}
