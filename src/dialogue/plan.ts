/** What a plan still wants of a job: the source of "what's left" and "what next". */
import type { Item } from "../facts/Item"
import { heldFact, isOnRecord } from "../record/holding"
import type { JobRecord } from "../record/JobRecord"
import { kindOfItem } from "../rules/itemKind"
import { comesIn, isPipe } from "../rules/partKind"
import type { JobPlan, Stage, Want, Wanted } from "./JobPlan"
import { usualPlan } from "./usualPlan"

/** One thing that is not on record yet. */
export interface Left {
  item: Item
  wanted: Wanted
  stage: string
}

const kinds: Readonly<Record<string, string>> = {
  "each main bond": "main_bond",
  "each supplementary bond": "supplementary_bond",
}

/** Items that stand on every job, so they are no parts that were named. */
const standing = new Set(["job", "electrode"])

/** A part that was surveyed and needs no bond, or is not here, wants nothing more. */
export const needsNothing = (record: JobRecord, item: Item): boolean => {
  const survey = heldFact(record, item, "survey")?.fact.value
  return survey !== undefined && survey !== "needs_bond"
}

const itemsOf = (record: JobRecord, { of }: Stage): readonly Item[] => {
  const kind = kinds[of]
  if (kind === undefined) return [of]
  return record.items.filter((item) => !standing.has(item) && kindOfItem(item) === kind && !needsNothing(record, item))
}

const isWith = (record: JobRecord, when: Want["when"]): boolean => {
  const arrangement = heldFact(record, "supply", "earthing_arrangement")?.fact.value
  return when === undefined || (arrangement !== undefined && when.includes(arrangement))
}

const isFor = (item: Item, only: Want["only"]): boolean =>
  only === undefined || (only === "pipes" ? isPipe(item) : comesIn(item))

/** Everything that is not on record yet, stage by stage in the usual order of work. */
export const leftOf = (record: JobRecord, plan: JobPlan = usualPlan): Left[] =>
  plan.stages
    .filter((stage) => isWith(record, stage.when))
    .flatMap((stage) =>
      itemsOf(record, stage).flatMap((item) =>
        stage.wants
          .filter(
            ({ want, when, only }) => isWith(record, when) && isFor(item, only) && !isOnRecord(record, item, want),
          )
          .map(({ want }) => ({ item, wanted: want, stage: stage.name })),
      ),
    )

/** What is not yet on record for one part, in the usual order of work. */
export const missingOf = (record: JobRecord, item: Item, plan: JobPlan = usualPlan): Wanted[] =>
  leftOf(record, plan)
    .filter((one) => one.item === item)
    .map((one) => one.wanted)

/** The next value (never a step) to ask for when a part has just been named. */
export const nextMissing = (record: JobRecord, item: Item, plan: JobPlan = usualPlan): Wanted | null =>
  missingOf(record, item, plan).find((wanted) => !wanted.startsWith("step:")) ?? null

/** Everything still to be said on the job, item by item in the order of work. */
export const whatsLeft = (record: JobRecord, plan: JobPlan = usualPlan): { item: Item; wanted: Wanted[] }[] => {
  const left = leftOf(record, plan)
  return [...new Set(left.map((one) => one.item))].map((item) => ({
    item,
    wanted: left.filter((one) => one.item === item).map((one) => one.wanted),
  }))
}

/**
 * What comes next: of the part that is being worked on as long as it wants something, unless something that has to come
 * before is not done; else the first thing of all. Null when nothing is left.
 */
export const nextOf = (record: JobRecord, current: Item | null, plan: JobPlan = usualPlan): Left | null => {
  const left = leftOf(record, plan)
  const own = left.find((one) => one.item === current)
  const before = plan.stages.find((stage) => stage.name === own?.stage)?.after ?? []
  return left.find((one) => own && before.includes(one.stage)) ?? own ?? left[0] ?? null
}
