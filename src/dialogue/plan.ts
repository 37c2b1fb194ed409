/** What a whole record of each part holds, in the usual order of work: the source of "what's left" and "next". */
import type { Step } from "../facts/Fact"
import { type Item, isBond } from "../facts/Item"
import { heldFact, heldIn, heldStep } from "../record/holding"
import type { JobRecord } from "../record/JobRecord"

/** One thing still to be said: a fact kind, or `step:<step>`. */
export type Wanted = string

const bondWants: readonly Wanted[] = [
  "conductor_csa",
  "length",
  "step:pipe_cleaned",
  "step:clamp_fitted",
  "distance",
  "step:label_fitted",
  "step:one_end_disconnected",
  "resistance",
  "step:connected_to_met",
]
const wantsOf: Readonly<Record<string, readonly Wanted[]>> = {
  supply: ["earthing_arrangement", "neutral_csa", "step:isolated_proved_dead"],
  earthing_conductor: ["conductor_csa"],
  test_leads: ["step:leads_nulled"],
  structural_steel: bondWants.filter((wanted) => wanted !== "distance" && wanted !== "step:pipe_cleaned"),
  lightning_protection: bondWants.filter((wanted) => wanted !== "distance" && wanted !== "step:pipe_cleaned"),
}

const isThere = (record: JobRecord, item: Item, wanted: Wanted): boolean => {
  if (wanted.startsWith("step:")) return heldStep(record, item, wanted.slice(5) as Step) !== undefined
  if (wanted === "neutral_csa" && heldFact(record, "supply", "earthing_arrangement")?.fact.value !== "TN-C-S")
    return true
  return heldIn(record, `${item}/${wanted}`) !== undefined
}

/** What is not yet on record for one part, in the usual order of work. */
export const missingOf = (record: JobRecord, item: Item): Wanted[] => {
  const wants = wantsOf[item] ?? (isBond(item) ? bondWants : [])
  return wants.filter((wanted) => !isThere(record, item, wanted))
}

/** The next value (never a step) to ask for when a part has just been named. */
export const nextMissing = (record: JobRecord, item: Item): Wanted | null =>
  missingOf(record, item).find((wanted) => !wanted.startsWith("step:")) ?? null

/** Everything still to be said on the job, part by part, in the order they were named; supply and conductor first. */
export const whatsLeft = (record: JobRecord): { item: Item; wanted: Wanted[] }[] => {
  const named = record.items.filter((item) => !["supply", "earthing_conductor", "test_leads", "met"].includes(item))
  return ["supply", "earthing_conductor", "test_leads", ...named]
    .map((item) => ({ item, wanted: missingOf(record, item) }))
    .filter((one) => one.wanted.length > 0)
}
