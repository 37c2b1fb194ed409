/** What a job has to be like to be found: the few conditions that plain words can set. All of a query's must hold. */
import type { Arrangement } from "../facts/Fact"
import type { Item } from "../facts/Item"

export type Sign = "<" | "<=" | "=" | ">=" | ">"
/** The values of a part that can be looked for. */
export type PartField = "size" | "reading" | "length" | "clamp"
/** One part by its name, every bond, or anything on the job. */
export type Whose = { item: Item } | { any: "bond" | "part" }
export type JobState = "stop" | "warn" | "open" | "kept" | "awaiting" | "unseen" | "signed" | "copy"

export type Condition =
  /** Each word begins a word of the place, of what was said, or of either. */
  | { kind: "words"; words: readonly string[]; in: "place" | "said" | "either" }
  /** Days, both included, that the job's own days touch. */
  | { kind: "days"; from: string | null; to: string | null }
  /** Some such part has such a value. The value is in mm², ohms, metres or millimetres. */
  | { kind: "value"; whose: Whose; field: PartField; sign: Sign; value: number }
  /** Some such part has such a value on record; with `not`, some such part has none. */
  | { kind: "recorded"; whose: Whose; field: PartField; not: boolean }
  | { kind: "overRange"; whose: Whose }
  | { kind: "has"; item: Item; not: boolean }
  | { kind: "supply"; arrangement: Arrangement }
  | { kind: "state"; state: JobState; not: boolean }

/** A condition with the place in the query that it was read from, so that it can be taken out again. */
export interface Understood {
  condition: Condition
  from: number
  to: number
}

/** A stretch of the query that set no condition, and why. */
export interface NotUnderstood {
  text: string
  because: string
  from: number
  to: number
}

export interface Query {
  understood: Understood[]
  notUnderstood: NotUnderstood[]
}
