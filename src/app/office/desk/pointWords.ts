/** The words and shapes of the list: what each kind of thing is called, and what a row says of it. */
import { isUnseen } from "../../../record/holding"
import type { Held } from "../../../record/JobRecord"
import type { Point, PointKind } from "../../../review/Point"
import { type EntryState, entryState } from "../../parts/entryState"
import type { Shape } from "../../parts/Mark"
import { showFact } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"

export const pointHeads: Record<PointKind, { shape: Shape; words: string }> = {
  stop: { shape: "stop", words: "Stops that stand open" },
  damage: { shape: "gone", words: "Lost or changed" },
  changed: { shape: "hand", words: "Changed after signing" },
  warn: { shape: "warn", words: "Open warnings" },
  waiting: { shape: "awaiting", words: "Waiting for a yes" },
  asked: { shape: "fresh", words: "Asked, not answered" },
  doubtful: { shape: "warn", words: "In doubt" },
  unseen: { shape: "fresh", words: "Nobody has said yes yet" },
  kept: { shape: "kept", words: "Kept on purpose" },
  unchallenged: { shape: "unchallenged", words: "Not challenged" },
  rest: { shape: "yes", words: "Answered, or put in by hand" },
}

/**
 * What became of a value. One that nobody answered is 'just said' only while the worker is at it; at the desk it is one
 * that nobody has said yes to.
 */
export const deskState = (held: Held): EntryState =>
  isUnseen(held) ? { shape: pointHeads.unseen.shape, words: "nobody has said yes yet" } : entryState(held)

/** The item and the field: "Water, size". */
export const pointName = ({ held, item, ask, fault }: Point): string => {
  if (fault !== undefined) return "The log"
  const label = held ? showFact(held.fact).label : ask ? "question" : ""
  const name = item ? showItem(item) : "Job"
  return label ? `${name}, ${label.charAt(0).toLowerCase()}${label.slice(1)}` : name
}

export const pointValue = ({ held }: Point): string => (held ? showFact(held.fact).value : "")

/** One line on why it is in the list; empty where the heading says it all. */
export const pointWhy = ({ kind, finding, reason, ask, margin, doubt, fault }: Point): string => {
  if (fault !== undefined) return fault
  if (kind === "kept") return `Kept: ${reason ?? ""}`
  if (finding) return finding.spoken
  if (ask) return ask.because.charAt(0).toUpperCase() + ask.because.slice(1)
  if (margin !== undefined) return `The ear was in doubt: margin ${margin.toFixed(2)}, below 1`
  if (doubt !== undefined) return doubt
  return reason ?? ""
}
