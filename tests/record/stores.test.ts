/** Both stores under the one contract, and what only the one on disk can suffer. */
import "fake-indexeddb/auto"
import Dexie from "dexie"
import { expect, test } from "vitest"
import { createIndexedDbStore } from "../../src/record/indexedDbStore"
import { createMemoryStore } from "../../src/record/memoryStore"
import { storeContract } from "../contracts/storeContract"
import { opened, stampLines, waterSize } from "./someLines"

let count = 0
const openFresh = async () => createIndexedDbStore(`test-${++count}`)

storeContract("memory", async () => createMemoryStore(), null)
storeContract("IndexedDB", openFresh, async () => createIndexedDbStore(`test-${count}`))

test("a damaged line on disk is counted and the others are still read", async () => {
  const store = createIndexedDbStore("damaged")
  await store.append(stampLines([opened, waterSize(10)]))
  const raw = new Dexie("damaged")
  raw.version(1).stores({ lines: "id, job, &[job+seq]" })
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
