/** What every store has to keep to, the one that forgets as well as the one on disk. */
import { afterEach, beforeEach, describe, expect, test } from "vitest"
import { plainRows, type RowMaker } from "../../src/record/RowMaker"
import type { Source } from "../../src/record/Source"
import type { Store } from "../../src/record/Store"
import { opened, stampLines, waterReading, waterSize } from "../record/someLines"

const source = (change: Partial<Source> = {}): Source => ({
  id: "bakery 1",
  job: "bakery",
  file: "bakery.bothhands.jsonl",
  kind: "job file",
  sha256: "ab",
  at: "2026-03-03T09:00:00Z",
  lines: 2,
  linesAfter: 2,
  faults: ["The file is cut: its end is missing."],
  ...change,
})

/** Runs the contract on one adapter. `reopen` gives a second store on the same disk, or null where nothing survives. */
export const storeContract = (
  name: string,
  open: (maker?: RowMaker) => Promise<Store>,
  reopen: ((maker?: RowMaker) => Promise<Store>) | null,
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

    test("a line gives way to what is left of it and its mark, both or none", async () => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines)
      const left = { ...lines[1]!, by: "struck" }
      const mark = stampLines([{ type: "put_away" }], "bakery", 2)[0]!
      expect((await store.strike(left, stampLines([{ type: "put_away" }], "bakery", 1)[0]!)).ok).toBe(false)
      expect((await store.read("bakery")).lines).toEqual(lines)
      expect(await store.strike(left, mark)).toEqual({ ok: true, value: undefined })
      expect((await store.read("bakery")).lines).toEqual([lines[0], left, mark])
    })

    test.each([
      ["another place", { seq: 7 }],
      ["another job", { job: "hall" }],
      ["no line", { id: "nobody" }],
    ])("nothing is struck in %s", async (_, change) => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines)
      const mark = stampLines([{ type: "put_away" }], "bakery", 2)[0]!
      expect((await store.strike({ ...lines[1]!, ...change }, mark)).ok).toBe(false)
      expect((await store.read("bakery")).lines).toEqual(lines)
    })

    test("a job that the office worked on last is in nobody's hand", async () => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines)
      expect((await store.jobs())[0]?.inHand).toBe(true)
      await store.append(stampLines([waterSize(16)], "bakery", 2).map((line) => ({ ...line, by: "office" })))
      expect((await store.jobs())[0]?.inHand).toBe(false)
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

    test("each job has one row, which follows its log", async () => {
      await store.append([...stampLines([opened], "bakery"), ...stampLines([opened, waterSize(6)], "hall")])
      await store.append(stampLines([waterSize(10)], "bakery", 1))
      const { rows, stale } = await store.rows()
      expect(Object.fromEntries(rows.map((row) => [row.job, row.lines]))).toEqual({ bakery: 2, hall: 2 })
      expect(stale).toEqual([])
      expect(await store.rowless()).toEqual([])
    })

    test("the jobs opened last come first, as many as were asked for, with the number of all", async () => {
      const openedAt = (job: string, at: string) => stampLines([opened], job).map((line) => ({ ...line, at }))
      await store.append([
        ...openedAt("hall", "2026-03-02T09:00:00.000Z"),
        ...openedAt("mill", "2026-03-04T09:00:00.000Z"),
        ...openedAt("bakery", "2026-03-03T09:00:00.000Z"),
      ])
      const { rows, jobs } = await store.newest(2)
      expect(rows.map((row) => row.job)).toEqual(["mill", "bakery"])
      expect(jobs).toBe(3)
    })

    test("lines that are refused leave the row as it was", async () => {
      await store.append(stampLines([opened, waterSize(10)]))
      await store.append(stampLines([waterSize(16)], "bakery", 1).map((line) => ({ ...line, id: "rival" })))
      expect((await store.rows()).rows.map((row) => row.lines)).toEqual([2])
    })

    test("a row that cannot be made does not keep the lines from being stored, and is made later", async () => {
      let isBroken = true
      const make: RowMaker["make"] = (lines) => {
        if (isBroken) throw new Error("a fault of ours")
        return plainRows.make(lines)
      }
      await store.close()
      store = await open({ version: "1", make })
      expect((await store.append(stampLines([opened]))).ok).toBe(true)
      expect(await store.rows()).toEqual({ rows: [], stale: ["bakery"] })
      isBroken = false
      expect((await store.renew(["bakery"])).map((row) => row.job)).toEqual(["bakery"])
      expect((await store.rows()).stale).toEqual([])
    })

    test("where lines came from is kept with them, once", async () => {
      const lines = stampLines([opened, waterSize(10)])
      await store.append(lines, [source()])
      await store.append(lines, [source({ lines: 0 })])
      await store.append(stampLines([opened], "hall"), [source({ id: "hall 1", job: "hall", faults: [] })])
      expect(await store.sources("bakery")).toEqual([source()])
      expect((await store.sources()).map((one) => one.job).sort()).toEqual(["bakery", "hall"])
      expect(await store.sources("nowhere")).toEqual([])
    })

    test("a job that came in as a file is in hand only once somebody carries on with it here", async () => {
      await store.append(stampLines([opened, waterSize(10)]), [source()])
      expect((await store.jobs()).map((job) => job.inHand)).toEqual([false])
      await store.append(stampLines([waterReading(0.05)], "bakery", 2))
      expect((await store.jobs()).map((job) => job.inHand)).toEqual([true])
    })

    test("a file that brought nothing new does not put away the job that is in hand", async () => {
      await store.append(stampLines([opened, waterSize(10)]))
      await store.append(stampLines([opened, waterSize(10)]), [source({ lines: 0 })])
      expect((await store.jobs()).map((job) => job.inHand)).toEqual([true])
    })

    test.skipIf(!reopen)("rows made by other rules are named stale and still given", async () => {
      await store.append(stampLines([opened]))
      await store.close()
      store = await reopen!({ ...plainRows, version: "newer" })
      const { rows, stale } = await store.rows()
      expect(rows.map((row) => row.job)).toEqual(["bakery"])
      expect(stale).toEqual(["bakery"])
      await store.renew(stale)
      expect((await store.rows()).stale).toEqual([])
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
