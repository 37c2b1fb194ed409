/** Both stores under the one contract, and what only the one on disk can suffer. */
import "fake-indexeddb/auto"
import Dexie from "dexie"
import { expect, test } from "vitest"
import { createIndexedDbStore } from "../../src/record/indexedDbStore"
import { createMemoryStore } from "../../src/record/memoryStore"
import { storeContract } from "../contracts/storeContract"
import { opened, stampLines, waterSize } from "./someLines"

let count = 0
storeContract("memory", async (maker) => createMemoryStore(maker), null)
storeContract(
  "IndexedDB",
  async (maker) => createIndexedDbStore(`test-${++count}`, maker),
  async (maker) => createIndexedDbStore(`test-${count}`, maker),
)

/** The database as versions before the rows made it. */
const openFirstVersion = (name: string) => {
  const raw = new Dexie(name)
  raw.version(1).stores({ lines: "id, job, &[job+seq]" })
  return raw
}

test("a damaged line on disk is counted and the others are still read", async () => {
  const store = createIndexedDbStore("damaged")
  await store.append(stampLines([opened, waterSize(10)]))
  const raw = new Dexie("damaged")
  await raw.open()
  await raw.table("lines").put({ id: "broken", job: "bakery", seq: 2, type: "entry" })
  raw.close()
  const found = await store.read("bakery")
  expect(found.damaged).toBe(1)
  expect(found.lines).toHaveLength(2)
  await store.close()
})

test("a full disk is refused in plain words", async () => {
  const store = createIndexedDbStore("full")
  await store.append(stampLines([opened]))
  const real = IDBObjectStore.prototype.add
  IDBObjectStore.prototype.add = () => {
    throw new DOMException("full", "QuotaExceededError")
  }
  const outcome = await store.append(stampLines([waterSize(10)], "bakery", 1))
  IDBObjectStore.prototype.add = real
  expect(outcome).toEqual({ ok: false, because: expect.stringContaining("full") })
  expect((await store.read("bakery")).lines).toHaveLength(1)
  await store.close()
})

test("jobs stored before there were rows are all there, and get theirs", async () => {
  const raw = openFirstVersion("first")
  const lines = [...stampLines([opened, waterSize(10)], "bakery"), ...stampLines([opened], "hall")]
  await raw.table("lines").bulkAdd(lines)
  raw.close()
  const store = createIndexedDbStore("first")
  expect(await store.rows()).toEqual({ rows: [], stale: ["bakery", "hall"] })
  expect((await store.jobs()).map((job) => [job.job, job.lines])).toEqual([
    ["bakery", 2],
    ["hall", 1],
  ])
  expect((await store.rows()).stale).toEqual([])
  expect((await store.read("bakery")).lines).toEqual(lines.slice(0, 2))
  await store.close()
})

test("rows that were lost or damaged are missed and made again from the logs", async () => {
  const store = createIndexedDbStore("lost")
  await store.append([...stampLines([opened], "bakery"), ...stampLines([opened], "hall")])
  const raw = new Dexie("lost")
  await raw.open()
  await raw.table("rows").delete("bakery")
  await raw.table("rows").update("hall", { row: { job: "hall", place: 7 } })
  raw.close()
  expect(await store.rowless()).toEqual(["bakery"])
  expect(await store.rows()).toEqual({ rows: [], stale: ["hall"] })
  expect((await store.jobs()).map((job) => job.job).sort()).toEqual(["bakery", "hall"])
  await store.close()
})
