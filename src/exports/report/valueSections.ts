/** Every value that stands on the record, part by part, with how it was taken down and the words it came from. */
import type { ExportedJob } from "../ExportedJob"
import { whatOf } from "../factWords"
import type { ValueTrail } from "../valueTrail"
import { clockWords } from "./momentWords"
import { itemName, quantity, sentence } from "./quantity"
import type { Block, Cell } from "./Report"
import { entryMark, itemState } from "./sayState"

/** "spoken: “gas bond ten square”". An utterance that the file has lost is said to be lost. */
export const cameFrom = ({ origin, words }: ValueTrail): string => {
  if (origin === "by hand") return `by hand: ${words[0] ?? ""}`
  return `${origin}: ${words.map((one) => (one === null ? "(an utterance that is not in the file)" : `“${one}”`)).join(" / ")}`
}

/** A long utterance that several values in a row came from is written out once. */
const longWords = 160

const wordsCell = (trail: ValueTrail, above: ValueTrail | undefined): Cell => {
  const words = cameFrom(trail)
  const isRepeated = words.length > longWords && above !== undefined && cameFrom(above) === words
  return { text: isRepeated ? `${trail.origin}: the same words as in the row above` : words }
}

const rowOf = (trail: ValueTrail, above: ValueTrail | undefined, day: string | null): Cell[] => [
  { text: sentence(whatOf(trail.held.fact)) },
  { text: quantity(trail.held.fact) },
  { text: trail.state, mark: entryMark(trail.state) },
  wordsCell(trail, above),
  { text: clockWords(trail.held.at, day) },
]

/** The supply and its conductor first, then the parts as they were named, then what belongs to the job or to no part. */
const itemOrder = ({ record }: ExportedJob): (string | null)[] => {
  const first = ["supply", "earthing_conductor", "met"]
  return [...first, ...record.items.filter((item) => !first.includes(item)), "job", null]
}

/** A table a part. */
export const valueSections = (job: ExportedJob, trails: readonly ValueTrail[]): Block[] => {
  const standing = trails.filter(({ holds }) => holds)
  const day = job.record.openedAt
  const tables = itemOrder(job).flatMap((item): Block[] => {
    const found = standing.filter(({ held }) => held.item === item)
    if (found.length === 0) return []
    const state = item === null || item === "job" ? null : itemState(item, job)
    const title = state ? `${itemName(item)}: ${state.words}` : itemName(item)
    return [
      { kind: "heading", level: 3, text: title, ...(state && { mark: state.mark }) },
      {
        kind: "table",
        heads: ["What", "Value", "How taken down", "Came from", "Time"],
        shares: [0.17, 0.21, 0.17, 0.35, 0.1],
        rows: found.map((trail, at) => rowOf(trail, found[at - 1], day)),
      },
    ]
  })
  const none: Block = { kind: "text", text: "No value stands on the record." }
  return [{ kind: "heading", level: 2, text: "Values" }, ...(tables.length > 0 ? tables : [none])]
}
