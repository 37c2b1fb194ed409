/** Changes at the desk: what they write, what they would turn, and that nothing is lost by them. */
import { expect, test } from "vitest"
import type { RecordedFact } from "../../src/facts/Fact"
import { heldFact } from "../../src/record/holding"
import { LogLine } from "../../src/record/LogLine"
import { warningKey } from "../../src/record/warningKey"
import type { Change } from "../../src/review/Change"
import { draftChange } from "../../src/review/draftChange"
import { previewChange } from "../../src/review/previewChange"
import type { ReviewedJob } from "../../src/review/ReviewedJob"
import { draftSignature } from "../../src/review/signing"
import { bakery, deskTools, logOf, review, tools } from "./officeJob"

const size = (value: number, subject = "water"): RecordedFact => ({
  kind: "conductor_csa",
  value,
  unit: "mm2",
  subject,
})

const make = (job: ReviewedJob, change: Change, reason = "seen on the photo") => {
  const drafted = draftChange(job.record, change, reason, deskTools())
  if (!drafted.ok) throw new Error(drafted.because)
  for (const line of drafted.value.lines) LogLine.parse(line)
  return review([...job.lines, ...drafted.value.lines])
}
const preview = (before: ReviewedJob, after: ReviewedJob) =>
  previewChange(before, after.record, (situation) => tools.check(situation))

test("a value by hand keeps its reason and names what it replaces; undone, the old one holds again", () => {
  const before = bakery()
  const after = make(before, { do: "value", fact: size(16) })
  const held = heldFact(after.record, "water", "conductor_csa")
  expect(held).toMatchObject({
    fact: { value: 16 },
    accepted: "tapped",
    origin: { by: "hand", reason: "seen on the photo" },
  })
  expect(after.lines.length).toBeGreaterThan(before.lines.length)
  const undone = make(after, { do: "withdraw", entry: held!.entry })
  expect(heldFact(undone.record, "water", "conductor_csa")?.fact.value).toBe(10)
})

test("the preview tells the value and the finding that would turn", () => {
  const before = bakery()
  const { values, findings } = preview(before, make(before, { do: "value", fact: size(6) }))
  expect(values).toMatchObject([
    { slot: "water/conductor_csa", before: { fact: { value: 10 } }, after: { fact: { value: 6 } } },
  ])
  expect(findings[0]).toMatchObject({ before: { rule: "mainBondSize", severity: "ok" }, after: { severity: "stop" } })
})

test("a sentence typed anew moves its values to the right part, and those of the old sentence are taken back", () => {
  const before = review(logOf(["pme", "gas ten square eight metres"]))
  const heard = before.lines.findLast((line) => line.type === "heard")
  const after = make(before, {
    do: "sentence",
    heard: heard?.type === "heard" ? heard.heard.id : null,
    text: "water ten square eight metres",
  })
  expect(heldFact(after.record, "water", "length")?.fact.value).toBe(8)
  expect(heldFact(after.record, "gas", "length")).toBeUndefined()
  expect(heldFact(after.record, "gas", "conductor_csa")).toBeUndefined()
  expect(heldFact(after.record, "water", "length")?.origin).toMatchObject({ by: "voice", reason: "seen on the photo" })
})

test.each([
  ["make me a cup of tea", /no value/],
  ["water point forty ohms", /could not be read for sure/],
])("nothing is written from “%s”", (text, because) => {
  const job = bakery()
  const drafted = draftChange(job.record, { do: "sentence", heard: null, text }, "as I heard it", deskTools())
  expect(drafted).toMatchObject({ ok: false, because: expect.stringMatching(because) })
})

test("no reason, no change", () => {
  const drafted = draftChange(bakery().record, { do: "value", fact: size(16) }, "  ", deskTools())
  expect(drafted).toMatchObject({ ok: false, because: expect.stringMatching(/Say why/) })
})

const sign = (job: ReviewedJob, role: "worker" | "reviewer", name = "") => {
  const draft = draftSignature(job, role, name)
  if (!draft.ok) throw new Error(draft.because)
  const last = job.lines.at(-1)!
  const line = {
    v: 1,
    id: `sign-${last.seq}`,
    job: last.job,
    at: last.at,
    by: "office",
    device: "d",
    seq: last.seq + 1,
  }
  return review([...job.lines, LogLine.parse({ ...line, ...draft.value })])
}

test("a job with an open stop cannot be signed; kept with a reason it can, and the signature says so", () => {
  const small = review(logOf(["pme", "supply neutral twenty five square", "water four square"]))
  expect(draftSignature(small, "worker", "")).toMatchObject({
    ok: false,
    because: expect.stringMatching(/stop stands open/),
  })
  const stop = small.checked.findings.find((finding) => finding.severity === "stop")!
  const kept = make(small, { do: "keep", warning: warningKey(stop) }, "to be replaced on Friday")
  const signed = sign(kept, "worker", "  R. Example ")
  expect(signed.record.signatures).toMatchObject([{ role: "worker", name: "R. Example" }])
  expect(signed.record.signatures[0]?.findings).toContainEqual(
    expect.objectContaining({ rule: "mainBondSize", severity: "stop", kept: "to be replaced on Friday" }),
  )
})

test("a signature names what is left open", () => {
  const draft = draftSignature(bakery(), "reviewer", "")
  expect(draft).toMatchObject({ ok: true, value: { undone: ["supply: polarity was not said"], findings: [] } })
})

test("both roles sign one record, and any change takes both signatures off with the reason", () => {
  const signed = sign(sign(bakery(), "worker"), "reviewer")
  expect(signed.record.signatures.map((one) => one.role)).toEqual(["worker", "reviewer"])
  const after = make(signed, { do: "value", fact: size(16) })
  expect(after.record.signatures).toEqual([])
  expect(after.record.signedOff).toBeNull()
  expect(after.record.reopenings).toMatchObject([
    { by: "office", because: expect.stringContaining("seen on the photo") },
  ])
})

test("a worker who goes on speaking opens a signed job again", () => {
  const signed = sign(review(logOf(["pme", "water ten square"])), "worker")
  expect(review(logOf(["what's left"], signed.lines)).record.signatures).toHaveLength(1)
  const spoken = review(logOf(["water fourteen metres"], signed.lines))
  expect(spoken.record.signatures).toEqual([])
  expect(spoken.record.reopenings).toHaveLength(1)
})
