/**
 * A log shortened to the row that the list of all jobs is searched by. What rules find in it is counted as the rules are
 * now, so rows are of a version and are made anew when the rules change: see D28.
 */
import type { Checked } from "../facts/Finding"
import type { Item } from "../facts/Item"
import type { Situation } from "../facts/Situation"
import { awaitingYes, heldFact, unseenYet } from "../record/holding"
import type { JobRecord } from "../record/JobRecord"
import type { JobRow, PartRow } from "../record/JobRow"
import type { LogLine } from "../record/LogLine"
import { project } from "../record/project"
import type { RowMaker } from "../record/RowMaker"
import { summarise } from "../record/summarise"
import { toSituation } from "../record/toSituation"
import { keptWarnings, openWarnings } from "../record/warningKey"
import { splitWords } from "./splitWords"

type Check = (situation: Situation) => Checked

/** Null for a log without a line. */
export const makeRow = (lines: readonly LogLine[], check: Check): JobRow | null => {
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
    ...countFindings(record, check),
    awaiting: awaitingYes(record).length,
    unseen: unseenYet(record).length,
    words: wordsOf(lines),
  }
}

/** Findings that stand open, by how grave they are, and those that were kept with a reason. */
const countFindings = (record: JobRecord, check: Check) => {
  const { findings } = check(toSituation(record))
  const open = openWarnings(record, findings)
  return {
    stops: open.filter((one) => one.severity === "stop").length,
    warns: open.filter((one) => one.severity === "warn").length,
    kept: keptWarnings(record, findings).length,
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

/** How a store makes its rows. `version` has to change with anything that may change what rules find. */
export const createRowMaker = (check: Check, version: string): RowMaker => ({
  version,
  make: (lines) => makeRow(lines, check),
})
