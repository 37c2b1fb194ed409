/**
 * The report before it has pages: what stands in it, in order, as plain values. It can be looked at without any PDF, and
 * whoever writes the pages judges nothing.
 */

/** A state as a shape beside its words, so that nothing rests on colour. */
export type Shape = "stop" | "warn" | "note" | "fits" | "yes" | "unchallenged" | "waiting" | "kept" | "gone" | "bare"

/** Where a reading lies, all in ohms. A null reading is over range. */
export interface BandDrawing {
  low: number
  nominal: number
  high: number
  reading: number | null
  /** The reading is a limit, "more than" or "less than", and no measured value. */
  limit?: "above" | "below"
  /** The drawing in words. */
  alt: string
}

export interface Cell {
  text: string
  /** Said more quietly below the text. */
  under?: string
  mark?: Shape
  band?: BandDrawing
}

/** One conductor of the picture with the thing at its far end. */
export interface DrawnConductor {
  name: string
  /** "10 mm²", or null while it was not said. */
  size: string | null
  /** "8 m", or null while it was not said. */
  length: string | null
  /** Further values with their units, the reading last. */
  values: readonly string[]
  csaMm2: number | null
  isElectrode: boolean
  state: { mark: Shape; words: string }
}

export interface DrawnArrangement {
  /** "TN-C-S", or null while it was not said. */
  arrangement: string | null
  supply: readonly string[]
  supplyState: { mark: Shape; words: string }
  conductor: DrawnConductor
  bonds: readonly DrawnConductor[]
  /** The whole picture in words. */
  alt: string
}

export type Block =
  | { kind: "heading"; level: 1 | 2 | 3; text: string; mark?: Shape }
  | { kind: "text"; text: string; tone?: "quiet" | "loud"; mark?: Shape }
  | { kind: "list"; items: readonly string[] }
  /** `shares` are the columns' parts of the width. The first cell of each row names it. */
  | { kind: "table"; heads: readonly string[]; shares: readonly number[]; rows: readonly (readonly Cell[])[] }
  | { kind: "arrangement"; drawn: DrawnArrangement }
  | { kind: "signatures"; roles: readonly string[] }

export interface Report {
  title: string
  /** Stands at the foot of every page, with the page's number. */
  foot: string
  blocks: readonly Block[]
}
