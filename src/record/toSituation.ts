/** The record as rules see it: plain values with the entry each came from, and under which conditions readings were taken. */
import type { Item } from "../facts/Item"
import type { Amperes, Metres, Millimetres, Mm2, Ohms } from "../facts/Quantity"
import type { Instrument, ItemSituation, Situation } from "../facts/Situation"
import { heldFact, heldStep } from "./holding"
import type { Held, JobRecord } from "./JobRecord"

/** Taken as the usual error of a low-resistance meter until the worker sets it. From memory, see D4. */
export const assumedInstrument: Instrument = { percent: 2, digits: 3, digitOhms: 0.01, assumed: true }

const itemSteps = ["pipe_cleaned", "clamp_fitted", "label_fitted", "one_end_disconnected", "connected_to_met"] as const

const known = <T>(value: T, held: Held) => ({ value, entry: held.entry, order: held.seq })

const stepsOf = (record: JobRecord, item: Item): ItemSituation["steps"] =>
  Object.fromEntries(
    itemSteps.flatMap((step) => {
      const held = heldStep(record, item, step)
      return held ? [[step, known(true as const, held)]] : []
    }),
  )

const readingOf = (record: JobRecord, item: Item): ItemSituation["reading"] => {
  const held = heldFact(record, item, "resistance")
  if (!held) return undefined
  const nulled = heldStep(record, "test_leads", "leads_nulled")
  const opened = heldStep(record, item, "one_end_disconnected")
  return {
    ohms: held.fact.value as Ohms | null,
    qualifier: held.fact.qualifier,
    entry: held.entry,
    leadsNulled: nulled !== undefined && nulled.seq < held.seq,
    oneEndDisconnected: opened !== undefined && opened.seq < held.seq,
  }
}

const toItem = (record: JobRecord, item: Item): ItemSituation => {
  const csa = heldFact(record, item, "conductor_csa")
  const length = heldFact(record, item, "length")
  const distance = heldFact(record, item, "distance")
  const reading = readingOf(record, item)
  const survey = heldFact(record, item, "survey")
  return {
    item,
    ...(csa && { csaMm2: known(csa.fact.value as Mm2, csa) }),
    ...(length && { lengthM: known(length.fact.value as Metres, length) }),
    ...(distance && {
      distanceMm: { ...known(distance.fact.value as Millimetres, distance), qualifier: distance.fact.qualifier },
    }),
    ...(reading && { reading }),
    steps: stepsOf(record, item),
    ...(survey?.fact.value === "plastic_at_entry" && { atEntry: { insulatingSection: known(true, survey) } }),
  }
}

/** What holds on the job, for the checker. */
export const toSituation = (record: JobRecord, instrument: Instrument = assumedInstrument): Situation => {
  const arrangement = heldFact(record, "supply", "earthing_arrangement")
  const neutral = heldFact(record, "supply", "neutral_csa")
  const fuse = heldFact(record, "supply", "fuse_rating")
  const polarity = heldFact(record, "supply", "polarity")
  const loop = heldFact(record, "supply", "resistance")
  const nulled = heldStep(record, "test_leads", "leads_nulled")
  const live = heldStep(record, "supply", "working_live")
  const dead = heldStep(record, "supply", "isolated_proved_dead")
  return {
    supply: {
      ...(arrangement && { arrangement: known(arrangement.fact.value, arrangement) }),
      ...(neutral && { neutralMm2: known(neutral.fact.value as Mm2, neutral) }),
      ...(fuse && { fuseA: known(fuse.fact.value as Amperes, fuse) }),
      ...(loop && loop.fact.value !== null && { zeOhms: known(loop.fact.value as Ohms, loop) }),
      ...(polarity && { polarity: known(polarity.fact.value, polarity) }),
    },
    items: record.items.filter((item) => item !== "supply").map((item) => toItem(record, item)),
    ...(nulled && { leadsNulled: known(true as const, nulled) }),
    ...(live && { workingLive: known(true as const, live) }),
    ...(dead && { isolatedProvedDead: known(true as const, dead) }),
    instrument,
  }
}
