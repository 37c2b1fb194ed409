/** Takes entries back, and with them the warnings that rest on them. */
import type { Held } from "../record/JobRecord"
import { openWarnings, warningKey } from "../record/warningKey"
import type { Turn } from "./Turn"

/** Marks every warning that rests on these entries as answered, and tells whether one of them still stands. */
export const answerWarnings = (turn: Turn, entries: readonly string[], how: string): boolean => {
  const due = turn.state.record.warnings.filter(
    ({ warning, answered }) =>
      answered === null &&
      warning
        .split("|")
        .slice(2)
        .some((entry) => entries.includes(entry)),
  )
  for (const { warning } of due) turn.add({ type: "answered", warning, how })
  const open = new Set(openWarnings(turn.state.record, turn.state.checked.findings).map(warningKey))
  return due.some(({ warning }) => open.has(warning))
}

/**
 * These and earlier ones of the same measured value in the same place that nobody said yes to: what is denied does not
 * come back as what stood before.
 */
export const withSameValue = ({ state }: Turn, entries: readonly string[]): string[] => {
  const denied = state.record.entries.filter((held) => entries.includes(held.entry))
  const isSame = (held: Held) =>
    "unit" in held.fact &&
    (held.accepted === null || held.accepted === "not_challenged") &&
    denied.some((one) => one.slot === held.slot && one.fact.value === held.fact.value)
  return state.record.entries.filter((held) => entries.includes(held.entry) || isSame(held)).map((held) => held.entry)
}

/** Those of the entries that stood until now, oldest first. */
export const withdraw = (turn: Turn, entries: readonly string[], because: NonNullable<Held["withdrawn"]>): Held[] => {
  const gone = turn.state.record.entries.filter((held) => entries.includes(held.entry) && held.withdrawn === null)
  answerWarnings(turn, entries, because)
  turn.isRepair = true
  for (const held of gone) turn.add({ type: "withdrawn", entry: held.entry, because })
  const { item, record } = turn.state
  // A part whose very name was taken back is no longer the one that is being talked about.
  if (item !== null && !record.items.includes(item) && gone.some((held) => held.item === item)) turn.set({ item: null })
  turn.check()
  return gone
}
