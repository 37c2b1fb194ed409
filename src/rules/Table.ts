/**
 * A table of figures with its source and how well it is known. Tables hold literals only: whatever is worked out from
 * them is a function elsewhere, so that a figure can be held against the book line by line.
 */
import type { Source, Status } from "../facts/Finding"

/** One line of a table. `status` is given only where a line is known less or better than its table. */
export type Row = Readonly<Record<string, number | string | boolean | null>> & { readonly status?: Status }

export interface Table<Line extends Row = Row> {
  title: string
  source: Source
  /** Unit of the figures; a figure that has another carries it in its name. */
  unit: string
  status: Status
  rows: readonly Line[]
  /** What the reader of the figures must know. */
  note?: string
}

/** Gives the table back, typed by its own rows. */
export const defineTable = <const Line extends Row>(table: Table<Line>): Table<Line> => table
