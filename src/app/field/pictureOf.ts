/**
 * The record as the picture shows it: the supply, the conductor to the terminal, and one bond a part. Everything is
 * repeated from the record and the findings; nothing is judged here.
 */
import type { DialogueState } from "../../dialogue/DialogueState"
import type { Arrangement, RecordedFact, Step } from "../../facts/Fact"
import { type Item, isBond } from "../../facts/Item"
import { allHeld, heldFact } from "../../record/holding"
import type { Held } from "../../record/JobRecord"
import { itemOf } from "../../record/slotOf"
import { isKept, openWarnings } from "../../record/warningKey"
import type { Shape } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"

export interface PictureState {
  shape: Shape
  words: string
}

/** One conductor with the thing at its far end. */
export interface PictureLine {
  item: Item
  name: string
  /** Values with units, in the order of a sentence; the reading last. */
  values: readonly string[]
  csaMm2: number | null
  steps: readonly Step[]
  state: PictureState
}

export interface Picture {
  arrangement: Arrangement | null
  /** Neutral, fuse and polarity with their labels. */
  supply: readonly string[]
  supplyState: PictureState
  conductor: PictureLine
  bonds: readonly PictureLine[]
}

const fieldOrder: readonly RecordedFact["kind"][] = ["conductor_csa", "length", "distance", "resistance"]

const stateOf = (dialogue: DialogueState, item: Item, held: readonly Held[]): PictureState => {
  const { record, checked } = dialogue
  const open = openWarnings(record, checked.findings).filter((finding) => finding.item === item)
  if (open.some((finding) => finding.severity === "stop")) return { shape: "stop", words: "stop" }
  if (open.length > 0) return { shape: "warn", words: "warning" }
  if (held.some((one) => one.needsYes && one.accepted === null)) return { shape: "awaiting", words: "awaiting yes" }
  const kept = checked.findings.some((finding) => finding.item === item && isKept(record, finding))
  if (kept) return { shape: "kept", words: "kept on purpose" }
  const told = held.some((one) => one.fact.kind !== "service")
  return told ? { shape: "yes", words: "on record" } : { shape: "bare", words: "nothing said yet" }
}

const lineOf = (dialogue: DialogueState, item: Item): PictureLine => {
  const held = allHeld(dialogue.record).filter((one) => itemOf(one.fact) === item)
  const values = fieldOrder.flatMap((kind) => held.filter((one) => one.fact.kind === kind))
  const show = ({ fact }: Held) => {
    const { value } = showFact(fact)
    return fact.kind === "distance" ? `clamp at ${value}` : value
  }
  return {
    item,
    name: showItem(item),
    values: values.map(show),
    csaMm2: heldFact(dialogue.record, item, "conductor_csa")?.fact.value ?? null,
    steps: held.flatMap(({ fact }) => (fact.kind === "step_done" ? [fact.value] : [])),
    state: stateOf(dialogue, item, held),
  }
}

/** What there is to draw. */
export const pictureOf = (dialogue: DialogueState): Picture => {
  const { record } = dialogue
  const supply = allHeld(record).filter((held) => itemOf(held.fact) === "supply")
  const told = supply.filter((held) => held.fact.kind !== "earthing_arrangement")
  return {
    arrangement: heldFact(record, "supply", "earthing_arrangement")?.fact.value ?? null,
    supply: told.map(({ fact }) => {
      const { label, value } = showFact(fact)
      return fact.kind === "step_done" ? label : `${label} ${value}`
    }),
    supplyState: stateOf(dialogue, "supply", supply),
    conductor: lineOf(dialogue, "earthing_conductor"),
    bonds: record.items.filter(isBond).map((item) => lineOf(dialogue, item)),
  }
}
