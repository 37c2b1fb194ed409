/** What became of an entry, in a word and a shape. It repeats what the log says and judges nothing. */
import type { Held } from "../../record/JobRecord"
import type { Shape } from "./Mark"

export interface EntryState {
  shape: Shape
  words: string
}

const states = {
  awaiting: { shape: "awaiting", words: "awaiting yes" },
  fresh: { shape: "fresh", words: "just said" },
  said_yes: { shape: "yes", words: "said yes" },
  not_challenged: { shape: "unchallenged", words: "not challenged" },
  tapped: { shape: "yes", words: "yes by tap" },
  hand: { shape: "hand", words: "by hand" },
  denied: { shape: "gone", words: "taken back" },
  undone: { shape: "gone", words: "undone" },
  started_over: { shape: "gone", words: "started over" },
} satisfies Record<string, EntryState>

/** The state of one entry. A value put in by hand stays told apart from spoken ones for good. */
export const entryState = (held: Held): EntryState => {
  if (held.withdrawn) return states[held.withdrawn]
  if (held.origin.by === "hand") return states.hand
  if (held.accepted) return states[held.accepted]
  return held.needsYes ? states.awaiting : states.fresh
}
