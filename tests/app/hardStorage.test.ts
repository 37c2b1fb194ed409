/** What may befall a log on disk: a clock that is put back, a store that dies half way, and lines of a newer version. */
import "fake-indexeddb/auto"
import Dexie from "dexie"
import { expect, test } from "vitest"
import { createIndexedDbStore } from "../../src/record/indexedDbStore"
import { project } from "../../src/record/project"
import { opened, stampLines, waterReading, waterSize } from "../record/someLines"

let count = 0
const newName = () => `hard-${++count}`
const lines = stampLines([opened, waterSize(10), waterReading(0.05)])

test("a clock that is put back changes neither the order of the lines nor what holds", async () => {
  const store = createIndexedDbStore(newName())
  const late = lines.map((line) => (line.seq === 2 ? { ...line, at: "2019-01-01T00:00:00.000Z" } : line))
  await store.append(late.slice(0, 2))
  await store.append(late.slice(2))
  const read = await store.read("bakery")
  expect(read.lines.map((line) => line.seq)).toEqual([0, 1, 2])
  expect(project(read.lines).entries).toHaveLength(2)
  expect((await store.jobs()).map((one) => one.job)).toEqual(["bakery"])
  await store.close()
})

test("a write that fails half way leaves nothing of itself, and the same lines go in afterwards", async () => {
  const store = createIndexedDbStore(newName())
  await store.append(lines.slice(0, 1))
  const clash = [lines[1]!, { ...lines[2]!, id: "another", seq: 0 }]
  expect((await store.append(clash)).ok).toBe(false)
  expect((await store.read("bakery")).lines).toEqual(lines.slice(0, 1))
  expect((await store.append(lines.slice(1))).ok).toBe(true)
  expect((await store.read("bakery")).lines).toEqual(lines)
  await store.close()
})

test("jobs that the first version stored are all there after the upgrade", async () => {
  const name = newName()
  const old = new Dexie(name)
  old.version(1).stores({ lines: "id, job, &[job+seq]" })
  await old.table("lines").bulkAdd(lines)
  old.close()
  const store = createIndexedDbStore(name)
  expect((await store.read("bakery")).lines).toEqual(lines)
  expect((await store.jobs()).map((one) => one.place)).toEqual(["The bakery"])
  await store.close()
})

test("lines of a newer version are counted as unread, kept as they are, and cost no other line", async () => {
  const name = newName()
  const store = createIndexedDbStore(name)
  await store.append(lines)
  const newer = { ...lines[1]!, v: 2, id: "newer", seq: 3, type: "from_next_year" }
  const raw = new Dexie(name)
  await raw.open()
  await raw.table("lines").add(newer)
  expect(await store.read("bakery")).toMatchObject({ lines, damaged: 1 })
  await store.append(stampLines([waterSize(16)], "bakery", 4))
  expect(await raw.table("lines").get("newer")).toEqual(newer)
  raw.close()
  await store.close()
})
