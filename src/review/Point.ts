/** One thing on a job that needs eyes, with the value it is about. */
import type { Finding } from "../facts/Finding"
import type { Ask } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import type { Held } from "../record/JobRecord"

/** Why something needs eyes, worst first. */
export const pointKinds = [
  "stop",
  "damage",
  "changed",
  "warn",
  "waiting",
  "asked",
  "doubtful",
  "unseen",
  "kept",
  "unchallenged",
  "rest",
] as const
export type PointKind = (typeof pointKinds)[number]

export interface Point {
  /** The same for the same thing while the job changes around it. */
  key: string
  kind: PointKind
  item: Item | null
  /** The value it is about; of a finding the one that is most likely to be put right. */
  held: Held | null
  finding?: Finding
  /** Why a warning was kept, or a job opened again. */
  reason?: string
  ask?: Ask
  /** The utterance behind a question that nobody answered. */
  heard?: string
  /** How far the ear's answer beat its rivals, where that was too little. */
  margin?: number
  /** What speaks against a value that nobody has said yes to, in plain words. */
  doubt?: string
  /** What was lost or damaged, in plain words. */
  fault?: string
}
