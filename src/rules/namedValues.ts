/**
 * The situation as flat named values, as far as they are known. Units are in the names, and each value carries the
 * entries it came from. What was never said to be done counts as not done; everything else that is absent is missing.
 */
import type { Missing } from "../facts/Finding"
import type { Item } from "../facts/Item"
import type { ItemSituation, Situation } from "../facts/Situation"

/** Every value that a rule may name, with the fact that would supply it and the item that fact belongs to. */
export const valueNames = {
  item: null,
  arrangement: { kind: "earthing_arrangement", item: "supply" },
  neutralMm2: { kind: "neutral_csa", item: "supply" },
  fuseA: { kind: "fuse_rating", item: "supply" },
  polarity: { kind: "polarity", item: "supply" },
  earthingMm2: { kind: "conductor_csa", item: "earthing_conductor" },
  csaMm2: { kind: "conductor_csa", item: "own" },
  lengthM: { kind: "length", item: "own" },
  distanceMm: { kind: "distance", item: "own" },
  distanceQualifier: null,
  ohms: { kind: "resistance", item: "own" },
  ohmsQualifier: null,
  readWithLeadsNulled: { kind: "step:leads_nulled", item: "job" },
  readWithOneEndOff: { kind: "step:one_end_disconnected", item: "own" },
  pipeCleaned: { kind: "step:pipe_cleaned", item: "own" },
  clampFitted: { kind: "step:clamp_fitted", item: "own" },
  labelFitted: { kind: "step:label_fitted", item: "own" },
  oneEndOff: { kind: "step:one_end_disconnected", item: "own" },
  connectedToMet: { kind: "step:connected_to_met", item: "own" },
  connectedAfterOff: null,
  insulatingSection: null,
  toMetOhms: null,
  between: null,
  protectiveMm2: null,
  bondProtected: null,
  lineMm2: null,
  zeOhms: null,
  faultKa: null,
  phases: null,
  residualMa: null,
  buried: null,
  corrosionProtected: null,
  mechanicallyProtected: null,
  workingLive: null,
  deadAfterLive: null,
  provedDead: { kind: "step:isolated_proved_dead", item: "job" },
  instrument: null,
} as const
export type ValueName = keyof typeof valueNames

export interface NamedValue {
  value: unknown
  entry?: string
}
export type NamedValues = Partial<Record<ValueName, NamedValue>>

const stepNames = {
  pipeCleaned: "pipe_cleaned",
  clampFitted: "clamp_fitted",
  labelFitted: "label_fitted",
  oneEndOff: "one_end_disconnected",
  connectedToMet: "connected_to_met",
} as const

const done = (step: { entry: string } | undefined): NamedValue =>
  step ? { value: true, entry: step.entry } : { value: false }

type Known = { value: unknown; entry: string } | undefined

/** Puts in what is known and leaves the rest out. */
const add = (values: NamedValues, known: Partial<Record<ValueName, Known>>): NamedValues => {
  for (const name in known) {
    const one = known[name as ValueName]
    if (one) values[name as ValueName] = { value: one.value, entry: one.entry }
  }
  return values
}

/** What is known about the job as a whole. */
export const jobValues = (situation: Situation): NamedValues => {
  const values: NamedValues = {
    provedDead: done(situation.isolatedProvedDead),
    instrument: { value: situation.instrument },
  }
  const { workingLive: live, isolatedProvedDead: dead } = situation
  if (live) {
    values.workingLive = { value: true, entry: live.entry }
    // Which came first is unknown while the log's order is; then it is not taken to be dead.
    const isAfter = dead?.order !== undefined && live.order !== undefined && dead.order > live.order
    values.deadAfterLive = { value: isAfter, entry: isAfter ? dead.entry : live.entry }
  }
  add(values, situation.supply)
  add(values, situation.earthing ?? {})
  return add(values, { earthingMm2: situation.items.find((one) => one.item === "earthing_conductor")?.csaMm2 })
}

/** Before there is a reading, what has been done so far says under which conditions it would be taken. */
const addReading = (values: NamedValues, { reading, steps }: ItemSituation, situation: Situation): void => {
  if (!reading) {
    add(values, { readWithLeadsNulled: situation.leadsNulled, readWithOneEndOff: steps.one_end_disconnected })
    return
  }
  const { entry } = reading
  values.ohms = { value: reading.ohms, entry }
  if (reading.qualifier) values.ohmsQualifier = { value: reading.qualifier, entry }
  values.readWithLeadsNulled = { value: reading.leadsNulled, entry }
  values.readWithOneEndOff = { value: reading.oneEndDisconnected, entry }
}

const addSteps = (values: NamedValues, { steps }: ItemSituation): void => {
  for (const name in stepNames) {
    const own = name as keyof typeof stepNames
    values[own] = done(steps[stepNames[own]])
  }
  const [on, off] = [steps.connected_to_met, steps.one_end_disconnected]
  // Whether the end went back on after it came off is unknown while the log's order is.
  if (on?.order !== undefined && off?.order !== undefined)
    values.connectedAfterOff = { value: on.order > off.order, entry: on.entry }
}

/** What is known about one item. */
export const itemValues = (of: ItemSituation, situation: Situation): NamedValues => {
  const { csaMm2, lengthM, distanceMm, joins } = of
  const values: NamedValues = { item: { value: of.item } }
  add(values, { csaMm2, lengthM, distanceMm })
  if (distanceMm?.qualifier) values.distanceQualifier = { value: distanceMm.qualifier, entry: distanceMm.entry }
  add(values, of.atEntry ?? {})
  if (joins)
    add(values, {
      between: joins.between,
      protectiveMm2: joins.protectiveMm2,
      bondProtected: joins.mechanicallyProtected,
    })
  addReading(values, of, situation)
  addSteps(values, of)
  return values
}

/** Where a missing value would come from. Nothing is asked for what follows from other values. */
export const missingFor = (rule: string, name: ValueName, item: Item | undefined): Missing | null => {
  const supplier = valueNames[name]
  if (supplier === null) return null
  if (supplier.item === "job") return { rule, kind: supplier.kind }
  const owner = supplier.item === "own" ? item : supplier.item
  return { rule, kind: supplier.kind, ...(owner !== undefined && { item: owner }) }
}
