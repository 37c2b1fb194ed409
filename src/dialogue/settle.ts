/** Ends a read-back. What was read back and needed no yes is 'not challenged' once the worker goes on. */
import type { Held, JobRecord } from "../record/JobRecord"
import type { AcceptedHow } from "../record/LogLine"
import type { Turn } from "./Turn"

/** The parts that these entries are of: what is agreed of a part agrees that it is that part. */
const withParts = ({ entries }: JobRecord, chosen: readonly string[]): string[] => {
  const items = new Set(entries.filter((held) => chosen.includes(held.entry)).map((held) => held.item))
  const isPart = (held: Held) => held.fact.kind === "service" && items.has(held.item)
  return entries.filter((held) => chosen.includes(held.entry) || isPart(held)).map((held) => held.entry)
}

/** Marks entries as accepted that wait for it. Where nobody hears the loop, nothing is. */
export const accept = (turn: Turn, entries: readonly string[], how: AcceptedHow): void => {
  if (turn.state.unheard || entries.length === 0) return
  for (const entry of withParts(turn.state.record, entries)) {
    const held = turn.state.record.entries.find((one) => one.entry === entry)
    if (held && held.accepted === null && held.withdrawn === null) turn.add({ type: "accepted", entry, how })
  }
}

/** A part of which only what was said to be wrong, or what waits for a yes, is on record may be the wrong part. */
const isOpenPart = ({ entries }: JobRecord, part: Held): boolean => {
  const others = entries.filter((held) => held.item === part.item && held.fact.kind !== "service")
  const isAgreed = others.some((held) => held.withdrawn === null && (held.accepted !== null || !held.needsYes))
  return part.fact.kind === "service" && others.length > 0 && !isAgreed
}

/** The worker goes on: routine values count as not challenged, and nothing is read back any more. */
export const settle = (turn: Turn): void => {
  const { record, readBack } = turn.state
  const read = record.entries.filter((held) => readBack?.entries.includes(held.entry))
  const routine = read.filter((held) => !held.needsYes && !isOpenPart(record, held))
  accept(
    turn,
    routine.map((held) => held.entry),
    "not_challenged",
  )
  turn.set({ readBack: null })
}
