/** The record that a log gives. */
import { expect, test } from "vitest"
import { allHeld, awaitingYes, heldFact, heldIn, historyOf } from "../../src/record/holding"
import type { Draft } from "../../src/record/LogLine"
import { project } from "../../src/record/project"
import { toSituation } from "../../src/record/toSituation"
import { entry, opened, stampLines, waterReading, waterSize } from "./someLines"

const recordOf = (...drafts: Draft[]) => project(stampLines([opened, ...drafts]))

test("the last value of a slot holds, and the earlier one stays in its history", () => {
  const record = recordOf(waterSize(4), waterSize(10))
  const held = heldFact(record, "water", "conductor_csa")!
  expect(held.fact.value).toBe(10)
  expect(historyOf(record, held).map((one) => one.fact.value)).toEqual([4])
})

test("a withdrawn value gives way to the one before it", () => {
  const record = recordOf(waterSize(10), waterSize(16), { type: "withdrawn", entry: "bakery-2", because: "undone" })
  expect(heldFact(record, "water", "conductor_csa")?.fact.value).toBe(10)
})

test("a reading waits for its yes, and no longer once it is accepted", () => {
  expect(awaitingYes(recordOf(waterReading(0.05)))).toHaveLength(1)
  const accepted: Draft = { type: "accepted", entry: "bakery-1", how: "said_yes" }
  expect(awaitingYes(recordOf(waterReading(0.05), accepted))).toHaveLength(0)
})

test("notes never push each other out", () => {
  const note = (value: string) => entry({ kind: "note", value })
  expect(allHeld(recordOf(note("Stop valve is stiff"), note("Tails are long"))).map((held) => held.fact.value)).toEqual(
    ["Stop valve is stiff", "Tails are long"],
  )
})

test("the order in which lines arrive does not matter", () => {
  const lines = stampLines([opened, waterSize(4), waterSize(10), waterReading(0.03)])
  expect(project([...lines].reverse())).toEqual(project(lines))
})

test("a line about an unknown entry changes nothing", () => {
  const record = recordOf(waterSize(10), { type: "accepted", entry: "gone", how: "tapped" })
  expect(heldIn(record, "water/conductor_csa")?.accepted).toBeNull()
})

test("the situation knows whether leads were nulled and an end was off before a reading, not after", () => {
  const nulled = entry({ kind: "step_done", value: "leads_nulled" })
  const off = entry({ kind: "step_done", value: "one_end_disconnected", subject: "water" })
  const before = toSituation(recordOf(nulled, off, waterReading(0.05)))
  const after = toSituation(recordOf(waterReading(0.05), nulled, off))
  expect(before.items[1]!.reading).toMatchObject({ ohms: 0.05, leadsNulled: true, oneEndDisconnected: true })
  expect(after.items[0]!.reading).toMatchObject({ ohms: 0.05, leadsNulled: false, oneEndDisconnected: false })
})
