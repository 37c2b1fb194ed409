/**
 * A log shortened to the row that the list of all jobs is searched by. What rules find is judged by the caller, who also
 * knows which findings were kept on purpose.
 */
import type { Item } from "../facts/Item"
import { awaitingYes, heldFact } from "../record/holding"
import type { JobRecord } from "../record/JobRecord"
import type { JobRow, PartRow } from "../record/JobRow"
import type { LogLine } from "../record/LogLine"
import { project } from "../record/project"
import { summarise } from "../record/summarise"
import { splitWords } from "./splitWords"

/** How many findings stand open, by how grave they are, and how many were kept with a reason. */
export interface Judged {
  stops: number
  warns: number
  kept: number
}

/** Null for a log that does not say where the job is. */
export const makeRow = (lines: readonly LogLine[], judge: (record: JobRecord) => Judged): JobRow | null => {
  const summary = summarise(lines)
  if (!summary) return null
  const record = project(lines)
  const opened = lines.find((line) => line.type === "job_opened")
  const arrangement = heldFact(record, "supply", "earthing_arrangement")?.fact.value
  const neutralMm2 = heldFact(record, "supply", "neutral_csa")?.fact.value
  return {
    ...summary,
    signedOff: record.signedOff !== null,
    ...(opened?.copyOf && { copyOf: opened.copyOf }),
    supply: { ...(arrangement && { arrangement }), ...(neutralMm2 && { neutralMm2 }) },
    parts: record.items.filter((item) => item !== "supply").map((item) => toPart(record, item)),
    ...judge(record),
    awaiting: awaitingYes(record).length,
    words: wordsOf(lines),
  }
}

const toPart = (record: JobRecord, item: Item): PartRow => {
  const size = heldFact(record, item, "conductor_csa")
  const length = heldFact(record, item, "length")
  const clamp = heldFact(record, item, "distance")
  const reading = heldFact(record, item, "resistance")
  return {
    item,
    ...(size && { mm2: size.fact.value }),
    ...(length && { lengthM: length.fact.value }),
    ...(clamp && { clampMm: clamp.fact.value }),
    ...(reading && { ohms: reading.fact.value }),
    ...(reading?.fact.qualifier && { limit: reading.fact.qualifier }),
  }
}

/** What was heard, and notes put in by hand. */
const wordsOf = (lines: readonly LogLine[]): string => {
  const words = new Set<string>()
  for (const line of lines) {
    const text =
      line.type === "heard"
        ? line.heard.text
        : line.type === "entry" && line.fact.kind === "note"
          ? line.fact.value
          : ""
    for (const word of splitWords(text)) words.add(word)
  }
  return [...words].join(" ")
}
