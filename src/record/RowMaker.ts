/** How a store makes the row it keeps beside a log. It is handed in, since rows tell what rules find and stores know none. */
import type { JobRow } from "./JobRow"
import type { LogLine } from "./LogLine"
import { summarise } from "./summarise"

export interface RowMaker {
  /** Changes whenever the same log may give another row; rows of another version are made anew. */
  version: string
  /** Null for a log without a line. */
  make(lines: readonly LogLine[]): JobRow | null
}

/** What a row holds where nothing was found or looked for. */
export const nothingFound = {
  signedOff: false,
  supply: {},
  parts: [],
  stops: 0,
  warns: 0,
  kept: 0,
  awaiting: 0,
  unseen: 0,
  words: "",
}

/** Rows without values and findings, for stores that only the worker's own list reads. */
export const plainRows: RowMaker = {
  version: "plain",
  make: (lines) => {
    const summary = summarise(lines)
    return summary && { ...summary, ...nothingFound }
  },
}

/** A row whatever happens: a fault in making one must never stop lines from being stored. */
export const makeRowBy = (maker: RowMaker, lines: readonly LogLine[]): JobRow | null => {
  try {
    return maker.make(lines)
  } catch {
    return null
  }
}
