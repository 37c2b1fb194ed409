/** What the loop wants done, as data, in this order. `app/` and `cli/` carry it out and report a failing store. */
import type { Context, SavedFile, Screen } from "../facts/Interpretation"
import type { LogLine } from "../record/LogLine"
import type { Preferences } from "./Preferences"

export type SoundName = "listening" | "gotIt" | "sayAgain" | "warning"

export type Effect =
  /** To be safely on disk before anything after it is done. */
  | { do: "append"; lines: readonly LogLine[] }
  | { do: "sound"; sound: SoundName }
  /** `loud`: as loud as the device can, whatever the worker set. */
  | { do: "say"; words: string; loud?: boolean }
  /** The ear should now be ready for this. */
  | { do: "expect"; context: Context }
  | { do: "listen"; on: boolean }
  /** The worker changed how he is spoken to: to be used from the next word on, and kept on this device. */
  | { do: "prefer"; preferences: Preferences }
  /** A check-in went unanswered, or was answered at last: flash and sound until it is off. */
  | { do: "alarm"; on: boolean }
  /** The worker wants to see this screen, or to have this file. */
  | { do: "show"; screen: Screen }
  | { do: "save"; what: SavedFile }
  /** The job was put away by voice: back to the start once everything was said. */
  | { do: "leave" }
