/** What one window writes, the others hear of, on a stand-in for the browser's channel. */
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { createJobNews, tellingStore } from "../../src/app/device/JobNews"
import { createMemoryStore } from "../../src/record/memoryStore"
import { strike } from "../../src/record/strike"
import { logOf } from "../review/officeJob"

/** Hands a message to all others of the name and never to itself, as browsers do. */
class Channel {
  static all: Channel[] = []
  onmessage: ((event: { data: unknown }) => void) | null = null
  constructor(readonly name: string) {
    Channel.all.push(this)
  }
  postMessage(data: unknown) {
    for (const one of Channel.all) if (one !== this && one.name === this.name) one.onmessage?.({ data })
  }
}

beforeEach(() => {
  Channel.all = []
  vi.stubGlobal("BroadcastChannel", Channel)
})
afterEach(() => {
  vi.unstubAllGlobals()
})

test("the others hear which jobs have grown or lost words, and who wrote hears nothing", async () => {
  const [here, there] = [createJobNews(), createJobNews()]
  const [heardHere, heardThere] = [vi.fn(), vi.fn()]
  here.watch(heardHere)
  const leave = there.watch(heardThere)
  const store = tellingStore(createMemoryStore(), here)
  const lines = logOf(["water ten square"])
  await store.append(lines)
  const heard = lines.find((line) => line.type === "heard")!
  const struck = strike(lines, { of: heard.id, from: 0, to: 5, because: "a private matter" })
  if (!struck.ok) throw new Error(struck.because)
  const mark = { ...lines.at(-1)!, ...struck.value.mark, id: "mark", seq: lines.length }
  expect(await store.strike(struck.value.left, mark as never)).toMatchObject({ ok: true })
  expect(heardThere.mock.calls).toEqual([[["hall"]], [["hall"]]])
  expect(heardHere).not.toHaveBeenCalled()
  leave()
  await store.append(logOf(["fourteen metres"], lines).slice(lines.length + 1))
  expect(heardThere).toHaveBeenCalledTimes(2)
})

test("what the store refused is no news", async () => {
  const [here, there] = [createJobNews(), createJobNews()]
  const heard = vi.fn()
  there.watch(heard)
  const store = tellingStore(createMemoryStore(), here)
  const lines = logOf(["water ten square"])
  await store.append(lines)
  const refused = await store.append([{ ...lines[0]!, id: "other" }])
  expect(refused.ok).toBe(false)
  expect(heard).toHaveBeenCalledTimes(1)
})
