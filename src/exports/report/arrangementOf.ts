/** The earthing arrangement as the record has it, for drawing: the supply, the conductor to the terminal, and the bonds. */
import { type Item, isBond } from "../../facts/Item"
import { allHeld, heldFact } from "../../record/holding"
import type { Held } from "../../record/JobRecord"
import { kindOfItem } from "../../rules/itemKind"
import type { ExportedJob } from "../ExportedJob"
import { itemWords, whatOf } from "../factWords"
import { itemName, quantity, sentence } from "./quantity"
import type { DrawnArrangement, DrawnConductor } from "./Report"
import { itemState } from "./sayState"

const apart = new Set(["conductor_csa", "length", "service", "step_done", "note", "time"])
const readingLast = (a: Held, b: Held) => Number(a.fact.kind === "resistance") - Number(b.fact.kind === "resistance")

const conductorOf = (item: Item, held: readonly Held[], job: ExportedJob): DrawnConductor => {
  const size = heldFact(job.record, item, "conductor_csa")?.fact
  const length = heldFact(job.record, item, "length")?.fact
  const rest = held.filter((one) => !apart.has(one.fact.kind)).sort(readingLast)
  return {
    name: itemName(item),
    size: size ? quantity(size) : null,
    length: length ? quantity(length) : null,
    values: rest.map(({ fact }) => `${fact.kind === "resistance" ? "reads" : whatOf(fact)} ${quantity(fact)}`),
    csaMm2: size?.value ?? null,
    isElectrode: kindOfItem(item) === "electrode",
    state: itemState(item, job),
  }
}

const sayConductor = ({ name, size, length, values, state }: DrawnConductor): string =>
  `${[name, size ?? "size not said", length ?? "length not said", ...values].join(", ")}: ${state.words}.`

/** What there is to draw, also in words. */
export const arrangementOf = (job: ExportedJob): DrawnArrangement => {
  const { record } = job
  const held = allHeld(record)
  const of = (item: Item) => held.filter((one) => one.item === item)
  const arrangement = heldFact(record, "supply", "earthing_arrangement")?.fact.value ?? null
  const told = of("supply").filter(({ fact }) => fact.kind !== "earthing_arrangement" && fact.kind !== "note")
  const supply = told.map(({ fact }) =>
    fact.kind === "step_done" ? sentence(quantity(fact)) : `${sentence(whatOf(fact))} ${quantity(fact)}`,
  )
  const conductor = conductorOf("earthing_conductor", of("earthing_conductor"), job)
  const bonds = record.items.filter(isBond).map((item) => conductorOf(item, of(item), job))
  const supplyState = itemState("supply", job)
  const said = [arrangement ?? `${itemWords("earthing_arrangement")} not said`, ...supply]
  const alt = [
    `The main earthing terminal with the supply and ${bonds.length} bonded parts.`,
    `Supply, ${said.join(", ")}: ${supplyState.words}.`,
    sayConductor(conductor),
    ...bonds.map(sayConductor),
  ].join(" ")
  return { arrangement, supply, supplyState, conductor, bonds, alt }
}
