/** Job files into a store: twice, grown, gone two ways, changed and cut. Nothing is overwritten and nothing is lost. */
import { expect, test } from "vitest"
import { readJobFile, writeJobFile } from "../../src/record/jobFile"
import type { Draft, LogLine } from "../../src/record/LogLine"
import { createMemoryStore } from "../../src/record/memoryStore"
import { project } from "../../src/record/project"
import type { Store } from "../../src/record/Store"
import { strike } from "../../src/record/strike"
import { takeInJob } from "../../src/record/takeInJob"
import { opened, stampLines, waterReading, waterSize } from "./someLines"

const at = "2026-03-04T09:00:00+00:00"
const take = async (store: Store, text: string) => {
  const taken = await takeInJob(store, { name: "job.jsonl", text, at })
  if (!taken.ok) throw new Error(taken.because)
  return taken.value
}
const storeWith = async (lines: LogLine[]) => {
  const store = createMemoryStore()
  await store.append(lines)
  return store
}
const shared = stampLines([opened, waterSize(10)])
/** What another device added behind the shared lines. */
const elsewhere = (drafts: Draft[], device: string) =>
  stampLines(drafts, "bakery", 2).map((line) => ({ ...line, id: `${device}-${line.seq}`, device }))

test("a file taken in twice is here already", async () => {
  const store = createMemoryStore()
  const text = writeJobFile(shared)
  expect(await take(store, text)).toEqual({
    job: "bakery",
    place: "The bakery",
    fresh: 2,
    known: 0,
    copyOf: null,
    faults: [],
  })
  expect(await take(store, text)).toMatchObject({ fresh: 0, known: 2, copyOf: null })
  expect((await store.read("bakery")).lines).toEqual(shared)
  expect(await store.sources()).toHaveLength(1)
})

test("a longer file adds what is new, and a shorter one takes nothing away", async () => {
  const store = await storeWith(shared)
  const longer = [...shared, ...stampLines([waterReading(0.05)], "bakery", 2)]
  expect(await take(store, writeJobFile(longer))).toMatchObject({ fresh: 1, known: 2, copyOf: null })
  expect(await take(store, writeJobFile(shared))).toMatchObject({ fresh: 0, known: 2 })
  expect((await store.read("bakery")).lines).toEqual(longer)
})

test("a job that two devices carried on with is kept twice, whole each time", async () => {
  const here = [...shared, ...elsewhere([waterReading(0.05), waterSize(16)], "tablet")]
  const there = [...shared, ...elsewhere([waterReading(0.02)], "phone")]
  const store = await storeWith(here)
  const taken = await take(store, writeJobFile(there))
  expect(taken).toMatchObject({ fresh: 3, known: 0, copyOf: "bakery", place: "The bakery" })
  expect((await store.read("bakery")).lines).toEqual(here)
  const copy = (await store.read(taken.job)).lines
  expect(project(copy).entries.map((held) => held.fact)).toEqual(project(there).entries.map((held) => held.fact))
  expect(copy[0]).toMatchObject({ type: "job_opened", copyOf: "bakery" })

  const grown = [...there, ...stampLines([waterSize(25)], "bakery", 3).map((line) => ({ ...line, id: "phone-3" }))]
  expect(await take(store, writeJobFile(grown))).toMatchObject({ job: taken.job, fresh: 1, known: 3 })
  expect(await take(store, writeJobFile(there))).toMatchObject({ job: taken.job, fresh: 0, known: 3 })
  const third = [...shared, ...elsewhere([waterSize(6)], "laptop")]
  const other = await take(store, writeJobFile(third))
  expect(other.job).not.toBe(taken.job)
  expect(await store.jobs()).toHaveLength(3)
})

test("in a second copy, answers and warnings still find the entries they are about", async () => {
  const drafts: Draft[] = [
    waterReading(0.05),
    { type: "accepted", entry: "phone-2", how: "said_yes" },
    { type: "said", words: "Warning.", warns: ["rule|water|phone-2|bakery-1"] },
    { type: "kept", warning: "rule|water|phone-2|bakery-1", reason: "no room" },
    { type: "withdrawn", entry: "bakery-1", because: "undone" },
  ]
  const store = await storeWith([...shared, ...elsewhere([waterSize(16)], "tablet")])
  const { job } = await take(store, writeJobFile([...shared, ...elsewhere(drafts, "phone")]))
  const record = project((await store.read(job)).lines)
  const [size, reading] = record.entries
  expect(reading).toMatchObject({ accepted: "said_yes" })
  expect(size).toMatchObject({ withdrawn: "undone" })
  expect(record.warnings).toEqual([
    expect.objectContaining({ warning: `rule|water|${reading!.entry}|${size!.entry}`, kept: "no room" }),
  ])
})

test("a second copy with struck words and a signature is a whole job file again", async () => {
  const note = stampLines([{ type: "said", words: "call the baker at home", warns: [] }], "bakery", 2)
  const struck = strike([...shared, ...note], { of: "bakery-2", from: 9, to: 14, because: "private" })
  if (!struck.ok) throw new Error(struck.because)
  const mark = stampLines([struck.value.mark], "bakery", 3)
  const there = [...shared, struck.value.left, ...mark]
  expect(readJobFile(writeJobFile(there))).toMatchObject({ ok: true, value: { faults: [] } })
  const store = await storeWith([...shared, ...elsewhere([waterSize(16)], "tablet")])
  const { job } = await take(store, writeJobFile(there))
  const copy = (await store.read(job)).lines
  expect(readJobFile(writeJobFile(copy))).toMatchObject({ ok: true, value: { faults: [], struck: 1 } })
})

test("a changed value in a line that is here does not get in, and is told", async () => {
  const store = await storeWith(shared)
  const text = writeJobFile(shared).replace('"value":10', '"value":16')
  const { faults, fresh } = await take(store, text)
  expect(fresh).toBe(0)
  expect(faults).toEqual([
    expect.stringContaining("Line 3 was changed"),
    expect.stringContaining("What is here stands"),
  ])
  expect((await store.read("bakery")).lines).toEqual(shared)
})

test("a changed file of a job that is not here is taken in, and stays marked", async () => {
  const store = createMemoryStore()
  const text = writeJobFile(shared).replace('"value":10', '"value":16')
  const { faults, fresh } = await take(store, text)
  expect(fresh).toBe(2)
  expect((await store.sources("bakery"))[0]?.faults).toEqual(faults)
  expect(faults[0]).toContain("was changed")
})

test("of a cut file, what stands before the cut is saved", async () => {
  const store = createMemoryStore()
  const text = writeJobFile([...shared, ...stampLines([waterReading(0.05)], "bakery", 2)])
  const { fresh, faults } = await take(store, text.slice(0, text.indexOf('"resistance"')))
  expect(fresh).toBe(2)
  expect(faults.join(" ")).toContain("The file is cut")
})

test("lines of another job, and two lines in one place, are left out and told", async () => {
  const store = createMemoryStore()
  const stray = stampLines([waterSize(25)], "hall", 5)
  const double = stampLines([waterSize(4)], "bakery", 1).map((line) => ({ ...line, id: "double" }))
  const { fresh, faults } = await take(store, writeJobFile([...shared, ...stray, ...double]))
  expect(fresh).toBe(2)
  expect(faults).toEqual([
    "One line was of another job and left out.",
    "One line stood in a place that was taken and left out.",
  ])
})

test("a job whose lines are another job's under a new name is not taken for a new one", async () => {
  const store = await storeWith(shared)
  const renamed = shared.map((line) => ({ ...line, job: "hall" }))
  const taken = await takeInJob(store, { name: "job.jsonl", text: writeJobFile(renamed), at })
  expect(taken).toEqual({ ok: false, because: expect.stringContaining("None was taken in") })
  const added = [...renamed, ...stampLines([waterReading(0.05)], "hall", 2)]
  const again = await take(store, writeJobFile(added))
  expect(again).toMatchObject({ fresh: 1, faults: [expect.stringContaining("2 lines have the ids")] })
})
