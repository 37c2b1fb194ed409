/** All rows in memory, ready to be searched. A row that is put in again takes the place of the job's earlier one. */
import type { JobRow } from "../record/JobRow"
import type { Condition } from "./Condition"
import { matches } from "./matches"
import { splitWords } from "./splitWords"
import { WordIndex } from "./WordIndex"

/** What a list is ordered by: the day, newest first; the place by its name; or what most needs looking at. */
export type Order = "newest" | "oldest" | "place" | "gravest"

export interface Finder {
  put(rows: readonly JobRow[]): void
  /**
   * Reads the words said of so many rows into the index, and tells whether there are more. A search for words reads what
   * is left; done before, in pieces, nobody waits for it.
   */
  readWords(most: number): boolean
  /** Rows that meet all conditions, in order. */
  find(conditions: readonly Condition[], order: Order): JobRow[]
  /** Every item of every job, by how many jobs have it. */
  items(): ReadonlyMap<string, number>
  readonly size: number
}

const collator = new Intl.Collator("en-GB", { numeric: true, sensitivity: "base" })

export const createFinder = (): Finder => {
  /** A place once given stays; null where a later row of the same job stands further on. */
  const rows: (JobRow | null)[] = []
  const placeOf = new Map<string, number>()
  const openedMs: number[] = []
  const counts = new Map<string, number>()
  const [placeWords, saidWords] = [new WordIndex(), new WordIndex()]
  let byName: Map<string, number> | null = null
  /** All places by each order that was asked for, since rows were put in last: searching then needs no sorting. */
  let ranked = new Map<Order, readonly number[]>()
  /** Places whose words said are not in the index yet: the list can stand before they are. */
  let unread: number[] = []

  const count = (row: JobRow, by: 1 | -1) => {
    for (const { item } of row.parts) counts.set(item, (counts.get(item) ?? 0) + by)
  }
  const putOne = (row: JobRow) => {
    const before = placeOf.get(row.job)
    if (before !== undefined) {
      count(rows[before]!, -1)
      rows[before] = null
    }
    const at = rows.push(row) - 1
    placeOf.set(row.job, at)
    openedMs.push(Date.parse(row.openedAt))
    count(row, 1)
    placeWords.add(at, splitWords(row.place))
    unread.push(at)
  }
  const readWords = (most: number): boolean => {
    for (const at of unread.slice(0, most)) saidWords.add(at, rows[at]?.words.split(" ") ?? [])
    unread = unread.slice(most)
    return unread.length > 0
  }
  const holding = (condition: Extract<Condition, { kind: "words" }>): Uint8Array[] =>
    condition.words.map((word) => {
      const hits = new Uint8Array(rows.length)
      if (condition.in !== "said") placeWords.mark(word, hits)
      if (condition.in !== "place") {
        readWords(unread.length)
        saidWords.mark(word, hits)
      }
      return hits
    })
  const nameRank = (row: JobRow): number => {
    if (!byName) {
      const names = [...new Set(rows.flatMap((one) => (one ? [one.place] : [])))].sort(collator.compare)
      byName = new Map(names.map((name, rank) => [name, rank]))
    }
    return byName.get(row.place)!
  }
  const newer = (a: number, b: number) => openedMs[b]! - openedMs[a]! || b - a
  const compare: Record<Order, (a: number, b: number) => number> = {
    newest: newer,
    oldest: (a, b) => -newer(a, b),
    place: (a, b) => nameRank(rows[a]!) - nameRank(rows[b]!) || newer(a, b),
    gravest: (a, b) =>
      rows[b]!.stops - rows[a]!.stops ||
      rows[b]!.warns - rows[a]!.warns ||
      rows[b]!.awaiting - rows[a]!.awaiting ||
      rows[b]!.unseen - rows[a]!.unseen ||
      newer(a, b),
  }

  const placesBy = (order: Order): readonly number[] => {
    const known = ranked.get(order) ?? [...rows.keys()].filter((at) => rows[at]).sort(compare[order])
    ranked.set(order, known)
    return known
  }

  return {
    put(fresh) {
      for (const row of fresh) putOne(row)
      if (fresh.length === 0) return
      byName = null
      ranked = new Map()
    },
    readWords,
    find(conditions, order) {
      const masks = conditions.flatMap((one) => (one.kind === "words" ? holding(one) : []))
      const others = conditions.flatMap((one) => (one.kind === "words" ? [] : [one]))
      const found: JobRow[] = []
      for (const at of placesBy(order)) {
        const row = rows[at]!
        if (masks.every((mask) => mask[at]) && others.every((one) => matches(row, one))) found.push(row)
      }
      return found
    },
    items: () => new Map([...counts].filter(([, jobs]) => jobs > 0)),
    get size() {
      return placeOf.size
    },
  }
}
