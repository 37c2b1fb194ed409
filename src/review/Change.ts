/** What can be done to a record at the desk. Each takes a reason and becomes lines of the log, never anything else. */
import type { RecordedFact } from "../facts/Fact"

export type Change =
  /** A value typed into its field. */
  | { do: "value"; fact: RecordedFact }
  /** The sentence that a value came from, typed as it should have been heard. `heard` names the old one. */
  | { do: "sentence"; heard: string | null; text: string }
  /** Takes one value back; what stood before it holds again. */
  | { do: "withdraw"; entry: string }
  /** Says yes to a value that waits for one. */
  | { do: "accept"; entry: string }
  /** Leaves a warned value as it is. `warning` is its key. */
  | { do: "keep"; warning: string }
  /** Opens a signed job again without changing anything yet. */
  | { do: "reopen" }
