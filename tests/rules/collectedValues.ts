/**
 * Turns each line of the collected check values into a comparison with what the rules give. A line that belongs to
 * another layer, or that has no figure to compare, is named in `notOurs` with the reason; nothing falls through.
 */
import values from "../checks/check-values.json"
import { abroad, worked } from "./compareAbroad"
import { bonding, heat } from "./compareBonding"
import { conductors } from "./compareConductors"
import { guidance, loops, tests } from "./compareTests"
import type { CollectedValue, Comparison } from "./comparing"

export const collectedValues = values as unknown as readonly CollectedValue[]

/** Lines that nothing here computes, by the start of their id, and where they belong. */
export const notOurs: ReadonlyArray<readonly [id: string, reason: string]> = [
  ["bs-5424-1", "what joins at the main terminal is a list for the person, not a figure"],
  ["bs-5424-2", "a means of disconnection is looked at by the person"],
  ["bs-51413-951", "which label is fixed is left to the label that comes with the clamp"],
  ["bs-6432", "the scope of testing is a list from memory"],
  ["bs-6437-ac", "how many tests a device gets is for the person; no reading is judged by it"],
  ["ecp-parallel", "an open point of method; said in the text of partNeedsBond"],
  ["en-", "what a meter must be able to do is its maker's affair; from memory"],
  ["bs951-", "ranges, labels and colours of clamps are looked at by the person"],
  ["gy-", "colours are looked at by the person"],
  ["safe-iso", "spoken by the dialogue as a caution and checked there as an order of steps"],
  ["gs38-tip", "probe tips are looked at by the person"],
  ["iec-amd1", "says only that an amendment exists; in the pack's line about newer editions"],
  ["ie-", "there is no Irish pack: its table was not seen"],
  ["us-250104", "which table serves which pipe, from memory"],
  ["hse-", "lone working belongs to the check-in, not to the rules"],
  ["checkin-", "lone working belongs to the check-in, not to the rules"],
]

const makers = Object.entries({
  ...conductors,
  ...bonding,
  ...heat,
  ...tests,
  ...loops,
  ...guidance,
  ...abroad,
  ...worked,
})

/** The comparison for a line, the reason why it is not ours, or null where nobody has thought of it. */
export const compare = (value: CollectedValue): Comparison | { notOurs: string } | null => {
  const skipped = notOurs.find(([id]) => value.id.startsWith(id))
  if (skipped) return { notOurs: skipped[1] }
  const maker = makers.filter(([id]) => value.id.startsWith(id)).sort(([a], [b]) => b.length - a.length)[0]
  return maker ? maker[1](value) : null
}
