/** Kept sound in the browser's database: what goes in comes out, and a full device gives up sound before any line. */
import "fake-indexeddb/auto"
import Dexie from "dexie"
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import type { Clip, ClipStore } from "../../src/record/Clip"
import { dropOldestSound } from "../../src/record/dropOldestSound"
import { createIndexedDbClips } from "../../src/record/indexedDbClips"
import { createIndexedDbStore } from "../../src/record/indexedDbStore"
import type { Store } from "../../src/record/Store"
import { opened, stampLines, waterSize } from "./someLines"

let count = 0
let name: string
let clips: ClipStore
let store: Store
const dropped = vi.fn()
beforeEach(() => {
  name = `clips-${++count}`
  clips = createIndexedDbClips(name)
  dropped.mockClear()
  store = createIndexedDbStore(name, undefined, dropOldestSound(dropped))
})
afterEach(async () => {
  vi.restoreAllMocks()
  await Promise.all([clips.close(), store.close()])
})

const clip = (heard: string, day = 1, job = "bakery"): Clip => ({
  v: 1,
  job,
  heard,
  at: new Date(Date.UTC(2026, 2, day)).toISOString(),
  from: 4.5,
  seconds: 1.25,
  type: "audio/wav",
  bytes: 3,
  silenced: [],
  sound: Uint8Array.of(1, 2, day),
})
const putAll = async (many: readonly Clip[]) => {
  for (const one of many) expect(await clips.put(one)).toMatchObject({ ok: true })
}
const kept = async () => (await clips.notes()).map((note) => note.heard).sort()

test("a clip comes out as it went in, and notes hold no sound", async () => {
  await putAll([clip("h1"), clip("h1", 2, "hall")])
  expect(await clips.read({ job: "bakery", heard: "h1" })).toEqual(clip("h1"))
  expect(await clips.read({ job: "hall", heard: "h1" })).toEqual(clip("h1", 2, "hall"))
  expect(await clips.read({ job: "hall", heard: "h2" })).toBeNull()
  const { sound: _, ...note } = clip("h1")
  expect(await clips.notes()).toContainEqual(note)
})

test("a clip is put in the place of the earlier one, dropped with its sound, and all are cleared", async () => {
  await putAll([clip("h1"), { ...clip("h1"), silenced: [{ start: 5, end: 6 }] }, clip("h2"), clip("h3")])
  expect((await clips.read({ job: "bakery", heard: "h1" }))?.silenced).toEqual([{ start: 5, end: 6 }])
  await clips.drop([{ job: "bakery", heard: "h2" }])
  expect(await kept()).toEqual(["h1", "h3"])
  await clips.clear()
  expect(await kept()).toEqual([])
  const raw = await new Dexie(name).open()
  expect(await raw.table("sounds").count()).toBe(0)
  raw.close()
})

test("clips that cannot be read are passed over, and cleared with the others", async () => {
  await putAll([clip("h1")])
  const raw = await new Dexie(name).open()
  await raw.table("clips").put({ job: "bakery", heard: "odd", at: 7 })
  await raw.table("sounds").put({ job: "bakery", heard: "h1", sound: "not bytes" })
  expect(await kept()).toEqual(["h1"])
  expect(await clips.read({ job: "bakery", heard: "h1" })).toBeNull()
  await clips.clear()
  expect(await raw.table("clips").count()).toBe(0)
  raw.close()
})

/** Lines and clips are refused until no more than so many clips are kept. */
const fillUp = (room: number) => {
  const add = IDBObjectStore.prototype.add
  vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(function (this: IDBObjectStore, ...given) {
    if (this.name === "lines" && held() > room) throw new DOMException("full", "QuotaExceededError")
    return add.apply(this, given)
  })
}
let held = () => 0

test("on a full device the oldest sound goes, half by half, until the lines are stored, and it is told", async () => {
  await store.append(stampLines([opened]))
  await putAll([1, 2, 3, 4, 5, 6].map((day) => clip(`h${day}`, 7 - day)))
  let left = 6
  held = () => left
  dropped.mockImplementation((clips: number) => {
    left -= clips
  })
  fillUp(2)
  expect(await store.append(stampLines([waterSize(10)], "bakery", 1))).toMatchObject({ ok: true })
  expect(dropped.mock.calls).toEqual([[3], [2]])
  expect(await kept()).toEqual(["h1"])
  expect((await store.read("bakery")).lines).toHaveLength(2)
})

test("where even that makes no room the line is refused in plain words, and the lines before it stand", async () => {
  await store.append(stampLines([opened]))
  await putAll([clip("h1")])
  held = () => 1
  fillUp(0)
  const refused = await store.append(stampLines([waterSize(10)], "bakery", 1))
  expect(refused).toEqual({ ok: false, because: expect.stringContaining("full") })
  expect((await store.read("bakery")).lines).toHaveLength(1)
})

test("a clip for which there is no room is refused, and touches no line", async () => {
  await store.append(stampLines([opened]))
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError")
  })
  expect(await clips.put(clip("h1"))).toEqual({ ok: false, because: expect.stringContaining("nothing of the job") })
  vi.restoreAllMocks()
  expect(await kept()).toEqual([])
  expect((await store.read("bakery")).lines).toHaveLength(1)
})
