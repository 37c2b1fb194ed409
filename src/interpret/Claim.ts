/** Something an utterance seems to say, before guards, repairs and conflicts have had their word. */

import type { Item } from "../facts/Item"
import type { Qualifier } from "../facts/Quantity"
import { unitOf } from "../facts/unitOf"

export type ClaimKind =
  | "conductor_csa"
  | "neutral_csa"
  | "length"
  | "distance"
  | "resistance"
  | "earthing_arrangement"
  | "fuse_rating"
  | "polarity"
  | "step_done"
  | "survey"
  | "service"
  /** A bare number that no field has a claim to. */
  | "field"

export interface Claim {
  kind: ClaimKind
  value: number | string | null
  unit?: "mm2" | "m" | "mm" | "ohm" | "A"
  qualifier?: Qualifier
  subject?: Item
  /** Tokens it stands on. */
  from: number
  to: number
  /** Set when it may be asked about but not written. */
  doubt?: ClaimDoubt
  /** Said digit by digit after it was said whole: settles how it sounded. */
  isSpelled?: boolean
  /** Only said to be wrong: "not sixteen". */
  isDenied?: boolean
  /** A bare number whose field was decided by the question or by its form alone. */
  isBare: boolean
}

export interface ClaimDoubt {
  candidates: ReadonlyArray<number | string>
  because: string
  /** The field to ask for when it is not the claim's own kind. */
  kind?: string
  /** The value itself is plain, and only whose it is has to be asked. */
  isPlainValue?: boolean
}

export type MeasuredKind = keyof typeof unitOf

export const isMeasured = (kind: string | undefined): kind is MeasuredKind => kind !== undefined && kind in unitOf
