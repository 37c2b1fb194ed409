/** What the office works with. `wiring.ts` makes the real one; tests bring a store that forgets. */
import type { Tools } from "../../dialogue/Tools"
import type { Store } from "../../record/Store"
import type { JobNews } from "../device/JobNews"

export interface Desk {
  store: Store
  tools: Tools
  /** Local time now, ISO 8601 with its offset. */
  now(): string
  /** This device's name in the log. */
  device: string
  /** Calls back with the jobs that another window wrote to, until what it gives is called. */
  watch?: JobNews["watch"]
}
