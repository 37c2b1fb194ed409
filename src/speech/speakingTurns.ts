/** Lets one thing after the other be heard. Hushing ends the one that is heard and drops those that wait. */
import type { Outcome } from "../facts/Outcome"
import { refuse } from "../facts/Outcome"
import { cutShort } from "./Voice"

export interface SpeakingTurns {
  /** Runs when everything before it has ended. The task ends soon after its signal aborts. */
  add(task: (signal: AbortSignal) => Promise<Outcome>): Promise<Outcome>
  hush(): void
}

export const createSpeakingTurns = (): SpeakingTurns => {
  let hushing = new AbortController()
  let last: Promise<unknown> = Promise.resolve()
  return {
    add: (task) => {
      const { signal } = hushing
      const turn = last.then(() => (signal.aborted ? refuse(cutShort) : task(signal)))
      // A task that throws is a fault of its own caller; the next one still has its turn.
      last = turn.catch(() => undefined)
      return turn
    },
    hush: () => {
      hushing.abort()
      hushing = new AbortController()
    },
  }
}
