/** What the loop wants done, as data, in this order. `app/` and `cli/` carry it out and report a failing store. */
import type { Context } from "../facts/Interpretation"
import type { LogLine } from "../record/LogLine"

export type SoundName = "listening" | "gotIt" | "sayAgain" | "warning"

export type Effect =
  /** To be safely on disk before anything after it is done. */
  | { do: "append"; lines: readonly LogLine[] }
  | { do: "sound"; sound: SoundName }
  | { do: "say"; words: string }
  /** The ear should now be ready for this. */
  | { do: "expect"; context: Context }
  | { do: "listen"; on: boolean }
