/** What every store has to keep to, the one that forgets as well as the one on disk. */
import { afterEach, beforeEach, describe, expect, test } from "vitest"
import type { Store } from "../../src/record/Store"
import { opened, stampLines, waterReading, waterSize } from "../record/someLines"

/** Runs the contract on one adapter. `reopen` gives a second store on the same disk, or null where nothing survives. */
export const storeContract = (
  name: string,
  open: () => Promise<Store>,
  reopen: (() => Promise<Store>) | null,
): void => {
  describe(`store contract: ${name}`, () => {
    let store: Store
    beforeEach(async () => {
      store = await open()
    })
    afterEach(() => store.close())

    test("gives back what was added, in the order of seq, field by field", async () => {
      const lines = stampLines([opened, waterSize(10), waterReading(null)])
      expect(await store.append(lines.slice(0, 1))).toEqual({ ok: true, value: undefined })
      expect(await store.append(lines.slice(1))).toEqual({ ok: true, value: undefined })
      expect(await store.read("bakery")).toEqual({ lines, damaged: 0 })
    })

    test("an unknown job has no lines, and an empty store no jobs", async () => {
      expect(await store.read("nowhere")).toEqual({ lines: [], damaged: 0 })
      expect(await store.jobs()).toEqual([])
    })

    test("a line that is already there is passed over", async () => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines)
      expect((await store.append(lines)).ok).toBe(true)
      expect((await store.read("bakery")).lines).toHaveLength(2)
    })

    test("two lines for one place are refused, and nothing of the second batch is kept", async () => {
      await store.append(stampLines([opened, waterSize(10)]))
      const rival = stampLines([waterSize(16), waterSize(25)], "bakery", 1).map((line) => ({
        ...line,
        id: `r${line.seq}`,
      }))
      const outcome = await store.append(rival)
      expect(outcome).toEqual({ ok: false, because: expect.stringContaining("Another window") })
      expect((await store.read("bakery")).lines.map((line) => line.id)).toEqual(["bakery-0", "bakery-1"])
    })

    test("jobs are listed newest first and kept apart", async () => {
      await store.append(stampLines([opened], "bakery"))
      await store.append(stampLines([opened, waterSize(6)], "hall"))
      const jobs = await store.jobs()
      expect(jobs.map((job) => [job.job, job.lines])).toEqual([
        ["hall", 2],
        ["bakery", 1],
      ])
    })

    test("a change to what was read does not change what is stored", async () => {
      await store.append(stampLines([opened]))
      const found = await store.read("bakery")
      found.lines[0]!.by = "somebody"
      expect((await store.read("bakery")).lines[0]!.by).toBe("worker")
    })

    test.skipIf(!reopen)("what was added is still there for the next one to open it", async () => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines)
      await store.close()
      store = await reopen!()
      expect((await store.read("bakery")).lines).toEqual(lines)
    })
  })
}
