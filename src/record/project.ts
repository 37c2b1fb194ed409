/**
 * The log folded into what holds now. Pure: the same lines always give the same record, and a line that refers to
 * something unknown is passed over, so that a record can still be read from a damaged log.
 */
import { emptyRecord, type Held, type JobRecord } from "./JobRecord"
import type { LogLine } from "./LogLine"
import { itemOf, slotOf } from "./slotOf"

const changeEntry = (record: JobRecord, entry: string, change: Partial<Held>): JobRecord => ({
  ...record,
  entries: record.entries.map((held) => (held.entry === entry ? { ...held, ...change } : held)),
})

const addEntry = (record: JobRecord, line: Extract<LogLine, { type: "entry" }>): JobRecord => {
  const { fact, origin, needsYes, at, seq } = line
  const slot = slotOf(fact, line.id)
  const item = itemOf(fact)
  const held: Held = { entry: line.id, slot, item, fact, at, seq, origin, needsYes, accepted: null, withdrawn: null }
  const isNew = item !== null && item !== "job" && !record.items.includes(item)
  return {
    ...record,
    entries: [...record.entries, held],
    slots: { ...record.slots, [slot]: [...(record.slots[slot] ?? []), line.id] },
    items: isNew ? [...record.items, item] : record.items,
  }
}

/** A part whose name was taken back, and of which nothing else stands, is not on the job. */
const withoutEmptyPart = (record: JobRecord, entry: string): JobRecord => {
  const named = record.entries.find((held) => held.entry === entry)
  if (named?.fact.kind !== "service") return record
  if (record.entries.some((held) => held.item === named.item && held.withdrawn === null)) return record
  return { ...record, items: record.items.filter((item) => item !== named.item) }
}

const changeWarning = (
  record: JobRecord,
  warning: string,
  change: { answered?: string; kept?: string },
): JobRecord => ({
  ...record,
  warnings: record.warnings.map((one) => (one.warning === warning ? { ...one, ...change } : one)),
})

const addWarnings = (record: JobRecord, line: Extract<LogLine, { type: "said" }>): JobRecord => {
  const { warns, words: said } = line
  if (warns.length === 0) return record
  // A warning that comes back after it was put right has to be answered anew; a reason that was given stays.
  const again = record.warnings.map((one) =>
    warns.includes(one.warning) && one.kept === null ? { ...one, said, answered: null } : one,
  )
  const fresh = warns.filter((warning) => !record.warnings.some((one) => one.warning === warning))
  return { ...record, warnings: [...again, ...fresh.map((warning) => ({ warning, said, answered: null, kept: null }))] }
}

const everyAfter = (record: JobRecord, line: Extract<LogLine, { type: "check_in" }>): number | null => {
  if (line.state === "stopped") return null
  return line.state === "set" ? (line.every ?? null) : record.checkEveryMinutes
}

const sign = (record: JobRecord, line: Extract<LogLine, { type: "signed_off" }>): JobRecord => {
  const { at, seq, role, undone, name = null, findings = null } = line
  const others = record.signatures.filter((one) => one.role !== role)
  return { ...record, signedOff: { at, role, undone }, signatures: [...others, { at, seq, role, name, findings }] }
}

const reopen = (record: JobRecord, { at, seq, by, because }: Extract<LogLine, { type: "reopened" }>): JobRecord => {
  const reopening = { at, seq, by, because, signatures: record.signatures }
  return { ...record, signedOff: null, signatures: [], reopenings: [...record.reopenings, reopening] }
}

const applyByType = (record: JobRecord, line: LogLine): JobRecord => {
  switch (line.type) {
    case "job_opened":
      return { ...record, job: line.job, place: line.place, pack: line.pack, openedAt: line.at }
    case "entry":
      return addEntry(record, line)
    case "accepted":
      return changeEntry(record, line.entry, { accepted: line.how })
    case "withdrawn":
      return withoutEmptyPart(changeEntry(record, line.entry, { withdrawn: line.because }), line.entry)
    case "said":
      return addWarnings(record, line)
    case "answered":
      return changeWarning(record, line.warning, { answered: line.how })
    case "kept":
      return changeWarning(record, line.warning, { answered: "kept", kept: line.reason })
    case "signed_off":
      return sign(record, line)
    case "reopened":
      return reopen(record, line)
    case "check_in":
      return { ...record, checkEveryMinutes: everyAfter(record, line) }
    default:
      return record
  }
}

/** The record after one more line. */
export const applyLine = (record: JobRecord, line: LogLine): JobRecord => ({
  ...applyByType(record, line),
  lastAt: line.at,
  nextSeq: Math.max(record.nextSeq, line.seq + 1),
})

/** The record that a whole log gives. Lines may come in any order; they are read by their `seq`. */
export const project = (lines: readonly LogLine[]): JobRecord =>
  [...lines].sort((a, b) => a.seq - b.seq).reduce(applyLine, emptyRecord)
