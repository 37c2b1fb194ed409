/** What the office works with. `wiring.ts` makes the real one; tests bring a store that forgets. */
import type { Tools } from "../../dialogue/Tools"
import type { Store } from "../../record/Store"

export interface Desk {
  store: Store
  tools: Tools
  /** Local time now, ISO 8601 with its offset. */
  now(): string
  /** This device's name in the log. */
  device: string
}
