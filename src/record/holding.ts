/** Questions one can ask a record: which entry holds in a slot, and what still waits for an answer. */
import type { RecordedFact, Step } from "../facts/Fact"
import type { Item } from "../facts/Item"
import type { Held, JobRecord } from "./JobRecord"

type Entries = JobRecord["entries"]

/** Kept for as long as the entries live, which are never changed in place: a long job is asked some thousand times. */
const holding = new WeakMap<Entries, ReadonlyMap<string, Held>>()

/** The last entry of each slot that was not withdrawn, newest first. */
const bySlot = (entries: Entries): ReadonlyMap<string, Held> => {
  const known = holding.get(entries)
  if (known) return known
  const last = new Map<string, Held>()
  for (let at = entries.length - 1; at >= 0; at--) {
    const held = entries[at]!
    if (held.withdrawn === null && !last.has(held.slot)) last.set(held.slot, held)
  }
  holding.set(entries, last)
  return last
}

/** The entry that holds in a slot: the last one that was not withdrawn. */
export const heldIn = (record: JobRecord, slot: string): Held | undefined => bySlot(record.entries).get(slot)

/** The last entry of a slot, whether it still holds or not. */
export const lastIn = (record: JobRecord, slot: string): Held | undefined =>
  record.entries.findLast((held) => held.slot === slot)

/** The fact that holds for a field of an item. */
export const heldFact = <Kind extends RecordedFact["kind"]>(record: JobRecord, item: Item, kind: Kind) => {
  const held = heldIn(record, `${item}/${kind}`)
  return held ? { ...held, fact: held.fact as Extract<RecordedFact, { kind: Kind }> } : undefined
}

/** The entry that says a step is done for an item, if one holds. */
export const heldStep = (record: JobRecord, item: Item, step: Step) => heldIn(record, `${item}/step_done/${step}`)

/** Whether something is on record for an item: `wanted` is a fact kind, or `step:<step>`. */
export const isOnRecord = (record: JobRecord, item: Item, wanted: string): boolean =>
  heldIn(record, wanted.startsWith("step:") ? `${item}/step_done/${wanted.slice(5)}` : `${item}/${wanted}`) !==
  undefined

/** All entries that hold, oldest first. */
export const allHeld = (record: JobRecord): Held[] => [...bySlot(record.entries).values()].reverse()

/** Entries that hold but still wait for a spoken or tapped yes. */
export const awaitingYes = (record: JobRecord): Held[] =>
  allHeld(record).filter((held) => held.needsYes && held.accepted === null)

/** Entries out of what was heard, which need no yes, and which nobody has said yes to or let pass. */
export const unseenYet = (record: JobRecord): Held[] => allHeld(record).filter(isUnseen)

/** Whether an entry is one of those. */
export const isUnseen = ({ accepted, withdrawn, origin, needsYes }: Held): boolean =>
  accepted === null && withdrawn === null && origin.by === "voice" && !needsYes

/** Earlier values of the same slot, oldest first, withdrawn ones included. */
export const historyOf = (record: JobRecord, held: Held): Held[] =>
  record.entries.filter((other) => other.slot === held.slot && other.entry !== held.entry && other.seq < held.seq)
