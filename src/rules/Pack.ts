/** A rule set for one jurisdiction and edition. It is advice; the edition in force and the competent person decide. */
import type { Arrangement } from "../facts/Fact"
import type { Item } from "../facts/Item"
import type { Rule } from "./Rule"
import type { Row, Table } from "./Table"

/** Something that the pack wants to know of every job, in words fit to be asked aloud. */
export interface PackQuestion {
  /** A fact kind or `step:<step>`. */
  kind: string
  item: Item
  /** Only with these arrangements, once the arrangement is known; always without it. */
  when?: readonly Arrangement[]
  words: string
  because: string
}

export interface Pack {
  id: string
  title: string
  /** The edition whose text the figures follow. */
  edition: string
  /** That a newer one may be in force, and what to check. */
  newer: string
  /** Few rules, seen at second hand: for orientation only. */
  thin: boolean
  rules: readonly Rule[]
  tables: readonly Table<Row>[]
  questions: readonly PackQuestion[]
}
