/** The record as JSON, in the shape of `ExportedRecord`; its lines are the job file's own, in their order. */
import type { Signature } from "../record/JobRecord"
import type { ExportedJob } from "./ExportedJob"
import type { ExportedRecord, ExportedValue } from "./ExportedRecord"
import { type ValueTrail, valueTrails } from "./valueTrail"

const toValue = ({ held, holds, state, origin, words, saidBack, earlier }: ValueTrail): ExportedValue => ({
  entry: held.entry,
  item: held.item,
  fact: held.fact,
  holds,
  state,
  accepted: held.accepted,
  origin,
  from: held.origin,
  words,
  saidBack,
  at: held.at,
  earlier: earlier.map((one) => one.entry),
})

const toSigned = ({ at, role, name, findings }: Signature) => ({ at, role, name, findings: findings && [...findings] })

/** The job as a plain value. */
export const toExportedRecord = (job: ExportedJob): ExportedRecord => {
  const { record, lines } = job
  return {
    format: "bothhands record",
    v: 1,
    job: record.job,
    place: record.place,
    pack: record.pack,
    caution: lines.find((line) => line.type === "job_opened")?.caution ?? "",
    openedAt: record.openedAt,
    lastAt: record.lastAt,
    signedOff: record.signedOff && { ...record.signedOff, undone: [...record.signedOff.undone] },
    signatures: record.signatures.map(toSigned),
    reopenings: record.reopenings.map(({ at, by, because, signatures }) => {
      return { at, by, because, signatures: signatures.map(toSigned) }
    }),
    faults: [...job.faults],
    values: valueTrails(job).map(toValue),
    findings: job.findings.map((finding) => ({ ...finding, open: job.open.includes(finding) })),
    missing: [...job.missing],
    warnings: [...record.warnings],
    lines: [...lines],
  }
}

/** The job as the text of a JSON file. */
export const recordJson = (job: ExportedJob): string => `${JSON.stringify(toExportedRecord(job), null, 2)}\n`
