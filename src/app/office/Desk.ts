/** What the office works with. `wiring.ts` makes the real one; tests bring a store that forgets. */
import type { Tools } from "../../dialogue/Tools"
import type { Outcome } from "../../facts/Outcome"
import type { ClipKey } from "../../record/Clip"
import type { Store } from "../../record/Store"
import type { JobNews } from "../device/JobNews"
import type { DroppedSound } from "../sound/DroppedSound"

export interface Desk {
  store: Store
  tools: Tools
  /** Local time now, ISO 8601 with its offset. */
  now(): string
  /** This device's name in the log. */
  device: string
  /** Calls back with the jobs that another window wrote to, until what it gives is called. */
  watch?: JobNews["watch"]
  sound: DeskSound
}

/** The sound that is kept on this device, as far as the office goes about it. */
export interface DeskSound {
  /** The sound of one utterance, or null where none was kept. */
  of(key: ClipKey): Promise<KeptSound | null>
  /** Takes a stretch of an utterance's sound away for good; seconds on the clock of its words. */
  silence(key: ClipKey, start: number, end: number): Promise<Outcome>
  /** Whether the sound of recordings that are taken in is kept. */
  isOn(): boolean
  dropped: DroppedSound
}

/** The sound of one utterance; `from` is where it begins, in seconds on the clock of the utterance's words. */
export interface KeptSound {
  blob: Blob
  from: number
  isSilenced: boolean
}
