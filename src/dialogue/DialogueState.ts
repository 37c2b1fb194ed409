/**
 * All that the loop remembers between two sentences. What is on record is in `record`; the rest is only what was asked
 * and read back last, and may be lost with the page without losing a value.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Checked } from "../facts/Finding"
import type { Ask } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import type { JobRecord } from "../record/JobRecord"
import type { LoneWorker } from "./loneWorker"
import type { Preferences } from "./Preferences"

/** The question that stands open: what is asked for, of which item, and what it may have been. */
export interface OpenQuestion {
  /**
   * A fact kind, `step:<step>`, `service`, `keep_reason`, or `confirm` for a proposal. Asked before an
   * act: `sign_off`, `start_over`, and `read_on` between two pages of a read-back.
   */
  kind: string
  item: Item | null
  words: string
  /** Why it is asked, for the screen. */
  because: string
  /** Facts that a tap, or a yes to a single one, would write. */
  candidates: readonly RecordedFact[]
  /** The utterances that raised it: a value that comes of the answer has them in its origin. */
  heard: readonly string[]
}

/** Entries that were just read back and may still be challenged. */
export interface ReadBack {
  entries: readonly string[]
  /** The one that a bare "no" or "make that …" is about. */
  main: string
  needsYes: boolean
  /** The question that stood when something else was heard, and is put again where that is denied. */
  interrupted?: Interrupted
}

/** A question as it stood. */
export type Interrupted = Pick<DialogueState, "question" | "doubt" | "spelled">

/** What is being heard and said, kept for the screen. */
export interface LastHeard {
  text: string
  /** Whether anything was made of it. */
  understood: boolean
}

/** A yes, a no or a part whose margin, with that of the ones right before it, is too small. */
export interface FaintAnswer {
  /** `confirm`, `deny`, or the part. */
  said: string
  margin: number
}

/** How often something was not understood in this sitting; it brings a hint, and only one time (`hints.ts`). */
export interface Troubles {
  /** A yes or a no that was too faint. */
  faintAnswers: number
  /** Readings that were asked about because of how they were heard. */
  readings: number
}

export interface DialogueState {
  job: string | null
  device: string
  by: string
  listening: boolean
  record: JobRecord
  checked: Checked
  /** The item that values without a name belong to. */
  item: Item | null
  question: OpenQuestion | null
  readBack: ReadBack | null
  /** Facts that were heard without a part to belong to; the next named part takes them. */
  homeless: { facts: readonly RecordedFact[]; heard: string[] } | null
  lastHeard: LastHeard | null
  /** What was said last, for "say again". */
  lastSaid: string
  /** The same, sentence by sentence. */
  lastSentences: readonly string[]
  /** How often the oldest unanswered warning was repeated. */
  reminders: number
  /** The answer that was heard last, where it was too faint to count and was asked for again. */
  faint: FaintAnswer | null
  /** The field, as its slot on the record, that was last asked for digit by digit; its answers and repairs are digits. */
  spelled: string | null
  /** Values that were offered, written nowhere, and said no to. */
  refused: readonly RecordedFact[]
  /** The last words of an ear that held a value, and those among such that were said no to since something was agreed. */
  heardAs: string | null
  misheard: readonly string[]
  troubles: Troubles
  /** The doubt behind an open question, as the interpreter gave it. */
  doubt: Ask | null
  preferences: Preferences
  /** Check-ins of a worker who is alone. */
  loneWorker: LoneWorker
  /** What is still to be read of a read-back that goes page by page; empty when none is under way. */
  pages: readonly string[]
  /**
   * Nobody hears what the loop says: words that were taken down elsewhere are played through it. So nothing that was said
   * can be an answer to it: a yes accepts nothing, and going on leaves no value 'not challenged'.
   */
  unheard: boolean
}
