/**
 * The shape of the exported JSON. It holds the log itself beside what was computed from it, so that the job can be
 * rebuilt from it line for line, and every entry ever made, not only those that stand.
 */
import { z } from "zod"
import { RecordedFact } from "../facts/Fact"
import { Finding, Missing } from "../facts/Finding"
import { Item } from "../facts/Item"
import { AcceptedHow, LogLine, Origin, SignedFinding } from "../record/LogLine"

export const ExportedValue = z.object({
  entry: z.string().describe("Id of the log line that made it."),
  item: Item.nullable(),
  fact: RecordedFact,
  holds: z.boolean().describe("Whether this is the value that stands now."),
  // What became of the entry, as the office reads it.
  state: z.enum([
    "said yes",
    "yes by tap",
    "not challenged",
    "waiting for a yes",
    "not answered",
    "replaced",
    "taken back",
    "undone",
  ]),
  accepted: AcceptedHow.nullable(),
  origin: z.enum(["spoken", "typed", "by hand"]),
  from: Origin,
  words: z.array(z.string().nullable()).describe("What it came from; null for an utterance that is not in the file."),
  saidBack: z.array(z.string()).describe("What the app said before the next utterance."),
  at: z.iso.datetime({ offset: true }),
  earlier: z.array(z.string()).describe("Entries that stood in the same place before, oldest first."),
})
export type ExportedValue = z.infer<typeof ExportedValue>

const Warned = z.object({
  warning: z.string(),
  said: z.string(),
  answered: z.string().nullable(),
  kept: z.string().nullable().describe("The reason for which it was left as it is."),
})

const Signed = z.object({
  at: z.iso.datetime({ offset: true }),
  role: z.string(),
  name: z.string().nullable().describe("As it was typed; nothing checks it."),
  findings: z.array(SignedFinding).nullable().describe("What stood open or was kept when it was signed."),
})

export const ExportedRecord = z.object({
  format: z.literal("bothhands record"),
  v: z.literal(1),
  job: z.string().nullable(),
  place: z.string(),
  pack: z.string().describe("The rule pack that the job was opened with."),
  caution: z.string().describe("What the worker was told when the job was opened."),
  openedAt: z.iso.datetime({ offset: true }).nullable(),
  lastAt: z.iso.datetime({ offset: true }).nullable(),
  signedOff: z
    .object({ at: z.iso.datetime({ offset: true }), role: z.string(), undone: z.array(z.string()) })
    .nullable(),
  signatures: z.array(Signed).describe("Signatures that hold: none once something was changed after signing."),
  reopenings: z
    .array(
      z.object({
        at: z.iso.datetime({ offset: true }),
        by: z.string(),
        because: z.string(),
        signatures: z.array(Signed).describe("What had been signed until then."),
      }),
    )
    .describe("Each time that a signed record was opened again, as by a change."),
  faults: z.array(z.string()).describe("What was wrong with the job file. Where not empty, this is a part of a job."),
  values: z.array(ExportedValue),
  findings: z.array(Finding.extend({ open: z.boolean() })),
  missing: z.array(Missing),
  warnings: z.array(Warned),
  lines: z.array(LogLine).describe("The log, in the order of the file."),
})
export type ExportedRecord = z.infer<typeof ExportedRecord>
