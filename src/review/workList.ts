/**
 * Everything on a job that needs eyes, worst first, and after it every other value: so that going down the list is going
 * through the whole job. A value stands once, at its worst.
 */
import type { Finding } from "../facts/Finding"
import { type Heard, sureMargin } from "../facts/Heard"
import type { Item } from "../facts/Item"
import { allHeld, isUnseen } from "../record/holding"
import type { Held, JobRecord } from "../record/JobRecord"
import type { LogLine } from "../record/LogLine"
import { isWarning, keptReason, warningKey } from "../record/warningKey"
import { doubtOf } from "./doubtOf"
import { type Point, pointKinds } from "./Point"
import type { ReviewedJob } from "./ReviewedJob"

/** Of the entries behind a finding, its own item's first, and among those the latest. */
const mainOf = (finding: Finding, record: JobRecord): Held | null => {
  const behind = record.entries.filter((held) => finding.rests.includes(held.entry) && held.fact.kind !== "service")
  return behind.findLast((held) => held.item === finding.item) ?? behind.at(-1) ?? null
}

const findingPoints = ({ record, checked }: ReviewedJob): Point[] =>
  checked.findings.filter(isWarning).map((finding) => {
    const reason = keptReason(record, finding)
    return {
      key: `finding ${warningKey(finding)} ${finding.which ?? ""}`,
      kind: reason !== null ? "kept" : finding.severity === "stop" ? "stop" : "warn",
      item: finding.item ?? null,
      held: mainOf(finding, record),
      finding,
      ...(reason !== null && { reason }),
    }
  })

const damagePoints = ({ trust }: ReviewedJob): Point[] =>
  trust.faults.map((fault) => ({ key: `damage ${fault}`, kind: "damage", item: null, held: null, fault }))

const entryChangedBy = (line: LogLine): string | null =>
  line.type === "entry" ? line.id : line.type === "withdrawn" ? line.entry : null

/** Of a job that was opened again and not signed since: the values that came or went. */
const changedPoints = ({ record, lines }: ReviewedJob): Point[] => {
  const last = record.reopenings.at(-1)
  if (!last || record.signatures.length > 0) return []
  const changed = new Set(lines.filter((line) => line.seq > last.seq).flatMap((line) => entryChangedBy(line) ?? []))
  const bySlot = new Map(
    record.entries.filter((held) => changed.has(held.entry)).map((held) => [held.slot, held] as const),
  )
  const point = { kind: "changed" as const, reason: last.because }
  if (bySlot.size === 0) return [{ ...point, key: `changed ${last.seq}`, item: null, held: null }]
  return [...bySlot.values()].map((held) => ({ ...point, key: `changed ${held.slot}`, item: held.item, held }))
}

/** Questions after which no value came from the same utterance. */
const askedPoints = ({ lines, record }: ReviewedJob): Point[] =>
  lines.flatMap((line, at) => {
    if (line.type !== "asked" || isAnswered(line, lines.slice(at + 1), record)) return []
    const { id, ask, item, heard } = line
    return [
      { key: `asked ${id}`, kind: "asked" as const, item: item ?? null, held: null, ask, ...(heard && { heard }) },
    ]
  })

/** Answered by a value that names the utterance, or by a later value of the kind that was asked for. */
const isAnswered = (
  { ask, item, heard }: Extract<LogLine, { type: "asked" }>,
  after: readonly LogLine[],
  record: JobRecord,
): boolean =>
  after.some((line) => {
    if (line.type !== "entry") return false
    const held = record.entries.find((one) => one.entry === line.id)
    if (!held || held.withdrawn) return false
    if (line.origin.by === "voice" && heard !== undefined && line.origin.heard.includes(heard)) return true
    return line.fact.kind === ask.kind && (item === undefined || held.item === item)
  })

const heardById = (lines: readonly LogLine[]): ReadonlyMap<string, Heard> =>
  new Map(lines.flatMap((line) => (line.type === "heard" ? [[line.heard.id, line.heard] as const] : [])))

const valuePoint = (record: JobRecord, held: Held, heard: ReadonlyMap<string, Heard>): Point => {
  const { origin, item, needsYes, accepted } = held
  const said = origin.by === "voice" ? origin.heard.flatMap((id) => heard.get(id) ?? []) : []
  const doubt = doubtOf(record, held, said)
  const point = { key: `value ${held.slot}`, item, held, ...(doubt !== null && { doubt }) }
  const margin = Math.min(...said.flatMap((one) => one.margin ?? []), Number.POSITIVE_INFINITY)
  if (needsYes && accepted === null) return { ...point, kind: "waiting" }
  if (margin < sureMargin && accepted !== "tapped") return { ...point, kind: "doubtful", margin }
  if (isUnseen(held)) return { ...point, kind: doubt === null ? "unseen" : "doubtful" }
  return { ...point, kind: accepted === "not_challenged" ? "unchallenged" : "rest" }
}

/** In the order of items as they were first named, and of time within one item. */
const placeOf = (record: JobRecord, { item, held }: Point): number => {
  const at = record.items.indexOf(item as Item)
  return (at < 0 ? record.items.length : at) * 1e6 + (held?.seq ?? 0)
}

export const workList = (job: ReviewedJob): Point[] => {
  const { record, lines } = job
  const found = [...findingPoints(job), ...damagePoints(job), ...changedPoints(job), ...askedPoints(job)]
  const shown = new Set(found.map((point) => point.held?.entry))
  const heard = heardById(lines)
  const holding = allHeld(record)
  // The name of a part stands on its own only where nothing else tells that the part is there.
  const isBare = (held: Held) => !holding.some((one) => one.item === held.item && one.fact.kind !== "service")
  const values = holding
    .filter((held) => !shown.has(held.entry) && (held.fact.kind !== "service" || isBare(held)))
    .map((held) => valuePoint(record, held, heard))
  const rank = (point: Point) => pointKinds.indexOf(point.kind)
  return [...found, ...values].sort((a, b) => rank(a) - rank(b) || placeOf(record, a) - placeOf(record, b))
}
