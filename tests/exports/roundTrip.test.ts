/** What is exported and taken in again is the same log, line for line, for jobs that nobody thought of. */
import fc from "fast-check"
import { expect, test } from "vitest"
import { ExportedRecord } from "../../src/exports/ExportedRecord"
import { recordJson } from "../../src/exports/recordJson"
import type { RecordedFact } from "../../src/facts/Fact"
import { sizesMm2 } from "../../src/facts/Quantity"
import { readJobFile, writeJobFile } from "../../src/record/jobFile"
import type { Draft } from "../../src/record/LogLine"
import { project } from "../../src/record/project"
import { opened, stampLines } from "../record/someLines"
import { jobOf } from "./bakeryJob"

const words = fc.string({ unit: "binary", minLength: 1, maxLength: 40 }).map((text) => text.slice(0, 200))
const item = fc.constantFrom("water", "gas", "earthing_conductor", "old_boiler")
const figure = fc.double({ min: 1e-3, max: 900, noNaN: true })

const fact: fc.Arbitrary<RecordedFact> = fc.oneof(
  fc.record({
    kind: fc.constant("conductor_csa" as const),
    value: fc.constantFrom(...sizesMm2),
    unit: fc.constant("mm2" as const),
    subject: item,
  }),
  fc.record({ kind: fc.constant("length" as const), value: figure, unit: fc.constant("m" as const), subject: item }),
  fc.record({
    kind: fc.constant("resistance" as const),
    value: figure,
    unit: fc.constant("ohm" as const),
    subject: item,
  }),
  fc.record({
    kind: fc.constant("resistance" as const),
    value: fc.constant(null),
    unit: fc.constant("ohm" as const),
    qualifier: fc.constant(">" as const),
    subject: item,
  }),
  fc.record({ kind: fc.constant("note" as const), value: words }),
)

const heardId = fc.nat(9).map((number) => `h${number}`)
const entryId = fc.nat(20).map((number) => `bakery-${number}`)

const draft: fc.Arbitrary<Draft> = fc.oneof(
  fc.record({ text: words, id: heardId }).map(
    ({ text, id }): Draft => ({
      type: "heard",
      heard: { id, text, alternatives: [text], words: [], start: 0, end: 1, engine: "transcript", margin: null },
    }),
  ),
  fc.record({ fact, heard: heardId, needsYes: fc.boolean() }).map(
    ({ fact, heard, needsYes }): Draft => ({
      type: "entry",
      fact,
      origin: { by: "voice", heard: [heard] },
      needsYes,
    }),
  ),
  fc
    .record({ fact, reason: words })
    .map(({ fact, reason }): Draft => ({ type: "entry", fact, origin: { by: "hand", reason }, needsYes: false })),
  entryId.map((entry): Draft => ({ type: "accepted", entry, how: "said_yes" })),
  entryId.map((entry): Draft => ({ type: "withdrawn", entry, because: "denied" })),
  words.map((text): Draft => ({ type: "said", words: text, warns: [text] })),
  words.map((text): Draft => ({ type: "kept", warning: text, reason: text })),
  words.map((text): Draft => ({ type: "signed_off", role: text, undone: [text] })),
  words.map((text): Draft => ({ type: "reopened", because: text })),
)

const job = fc.array(draft, { maxLength: 40 }).map((drafts) => stampLines([opened, ...drafts]))

test("a job file gives back every line and the same record", () => {
  fc.assert(
    fc.property(job, (lines) => {
      const text = writeJobFile(lines)
      const file = readJobFile(text)
      if (!file.ok) throw new Error(file.because)
      expect(file.value.faults).toEqual([])
      expect(file.value.lines).toEqual(lines)
      expect(project(file.value.lines)).toEqual(project(lines))
      expect(writeJobFile(file.value.lines)).toBe(text)
    }),
    { numRuns: 60 },
  )
})

test("the exported JSON fits its own schema and gives the job file back, byte for byte", () => {
  fc.assert(
    fc.property(job, (lines) => {
      const text = writeJobFile(lines)
      const record = ExportedRecord.parse(JSON.parse(recordJson(jobOf(text))))
      expect(writeJobFile(record.lines)).toBe(text)
    }),
    { numRuns: 60 },
  )
})
