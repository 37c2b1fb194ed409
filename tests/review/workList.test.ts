/** What the desk is shown first, on jobs that went through the real loop. */
import { expect, test } from "vitest"
import { allHeld } from "../../src/record/holding"
import type { LogLine } from "../../src/record/LogLine"
import { draftChange } from "../../src/review/draftChange"
import { pointKinds } from "../../src/review/Point"
import { draftSignature } from "../../src/review/signing"
import { workList } from "../../src/review/workList"
import { bakery, deskTools, logOf, review } from "./officeJob"

const kindsOf = (lines: readonly LogLine[], more = {}) =>
  workList(review(lines, more)).map((point) =>
    `${point.kind} ${point.item ?? "job"} ${point.held?.fact.kind ?? ""}`.trim(),
  )

test("every value that holds stands in the list once, and only parts without values by their name", () => {
  const job = bakery()
  const shown = workList(job).flatMap((point) => point.held?.entry ?? [])
  const holding = allHeld(job.record).filter((held) => held.fact.kind !== "service")
  expect([...shown].sort()).toEqual(holding.map((held) => held.entry).sort())
})

test("a small bond comes before a reading that waits, and that before what went unchallenged", () => {
  const kinds = kindsOf(
    logOf([
      "pme",
      "supply neutral twenty five square",
      "water four square",
      "yes",
      "reading nought point nought five ohms",
    ]),
  )
  expect(kinds[0]).toBe("stop water conductor_csa")
  expect(kinds).toContain("waiting water resistance")
  const ranks = kinds.map((kind) => pointKinds.indexOf(kind.split(" ")[0] as (typeof pointKinds)[number]))
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
})

test("a warning kept with a reason goes down the list and shows the reason", () => {
  const said = ["pme", "supply neutral twenty five square", "water four square", "keep it because the client insists"]
  const kept = workList(review(logOf(said))).find((point) => point.kind === "kept")
  expect(kept?.reason).toContain("client insists")
})

test("a question that nobody answered is shown, and no longer once its value came", () => {
  const asked = logOf(["pme", "gas bond point forty ohms"])
  expect(kindsOf(asked).filter((kind) => kind.startsWith("asked"))).toHaveLength(1)
  const answered = logOf(["gas reading nought point nought four ohms", "yes"], asked)
  expect(kindsOf(answered).filter((kind) => kind.startsWith("asked"))).toEqual([])
})

test("a value that the ear was in doubt of is shown with its margin, also after a yes", () => {
  const lines = logOf(["water", { text: "ten square", margin: 0.4, alternatives: ["ten square please"] }, "yes"])
  const point = workList(review(lines)).find((one) => one.kind === "doubtful")
  expect(point).toMatchObject({ item: "water", margin: 0.4 })
})

test("lost lines and faults of the file stand above open warnings", () => {
  const lines = logOf(["pme", "supply neutral twenty five square", "water six square"])
  const kinds = kindsOf(lines, { damaged: 2, faults: ["Line 9 was changed, or one before it is missing."] })
  expect(kinds.slice(0, 3)).toEqual(["stop water conductor_csa", "damage job", "damage job"])
})

test("a change after signing is shown until it is signed again", () => {
  const lines = logOf(["pme", "water ten square"])
  const job = review(lines)
  const signature = draftSignature(job, "worker", "")
  if (!signature.ok) throw new Error(signature.because)
  const last = lines.at(-1)!
  const signed = [...lines, { ...last, id: "sign", seq: last.seq + 1, ...signature.value } as LogLine]
  const changed = draftChange(
    review(signed).record,
    { do: "value", fact: { kind: "conductor_csa", value: 16, unit: "mm2", subject: "water" } },
    "read on site",
    deskTools(),
  )
  if (!changed.ok) throw new Error(changed.because)
  const after = review([...signed, ...changed.value.lines])
  expect(workList(after)[0]).toMatchObject({
    kind: "changed",
    item: "water",
    reason: expect.stringContaining("read on site"),
  })
  expect(after.record.signatures).toEqual([])
  expect(after.record.reopenings[0]?.signatures).toHaveLength(1)
})
