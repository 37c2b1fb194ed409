/** What can happen to the loop. Time arrives in the event: the loop has no clock. */
import type { Answer, RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Command } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import type { LogLine } from "../record/LogLine"
import type { Preferences } from "./Preferences"

export type DialogueEvent = { at: string } & (
  | { type: "opened"; job: string; place: string; pack: string }
  /** A stored job is taken up again. */
  | { type: "resumed"; lines: readonly LogLine[] }
  | { type: "heard"; heard: Heard }
  /**
   * A button or a key: the same acts as by voice. `about` names the entry or the warning (by its key) that the button
   * stands beside; without it the act is about what was read back or warned of last, as by voice.
   */
  | { type: "tapped"; act: Answer | Command; about?: string }
  /** A value put in by hand. */
  | { type: "entered"; facts: readonly RecordedFact[]; reason: string }
  /** An item chosen by hand. */
  | { type: "chose"; item: Item }
  /** The worker puts the job away. */
  | { type: "left" }
  /** Some time has passed in silence since the last sentence. */
  | { type: "waited" }
  /** Time has passed, whatever else happens: due when `tickInMs` of the lone worker has run out. */
  | { type: "ticked" }
  /** Preferences set on the screen, or brought back when the page opens. Answered with nothing. */
  | { type: "preferred"; preferences: Preferences }
)
