/**
 * The browser's store, on IndexedDB by way of Dexie. It asks for strict durability: without it, Chromium answers before
 * the lines have left the operating system's cache, and a power cut could still take a value that was read back as done.
 */
import Dexie, { type Table } from "dexie"
import { done, refuse } from "../facts/Outcome"
import { LogLine } from "./LogLine"
import type { Store } from "./Store"
import { newestFirst, summarise } from "./summarise"

class Lines extends Dexie {
  lines!: Table<LogLine, string>
  constructor(name: string) {
    super(name, { chromeTransactionDurability: "strict" })
    this.version(1).stores({ lines: "id, job, &[job+seq]" })
  }
}

/** Why a write failed, in words for the worker. */
const sayWhy = (error: unknown): string => {
  const names = [error, (error as { inner?: unknown }).inner].map((one) => (one as Error | undefined)?.name ?? "")
  if (names.includes("QuotaExceededError"))
    return "The storage of this device is full. Free some space; nothing was lost."
  if (names.some((name) => name === "ConstraintError" || name === "BulkError")) {
    return "Another window has already written to this job. Nothing was overwritten."
  }
  return "This browser could not save to its storage. Keep the page open and export the job."
}

/** Opens, or creates, the database of that name. */
export const createIndexedDbStore = (name = "bothhands"): Store => {
  const database = new Lines(name)
  return {
    async append(lines) {
      try {
        await database.transaction("rw", database.lines, async () => {
          const found = await database.lines.bulkGet(lines.map((line) => line.id))
          await database.lines.bulkAdd(lines.filter((_, index) => found[index] === undefined))
        })
        return done(undefined)
      } catch (error) {
        return refuse(sayWhy(error))
      }
    },
    async read(job) {
      const rows = await database.lines.where("job").equals(job).sortBy("seq")
      const parsed = rows.map((row) => LogLine.safeParse(row))
      return {
        lines: parsed.flatMap((one) => (one.success ? [one.data] : [])),
        damaged: parsed.filter((one) => !one.success).length,
      }
    },
    async jobs() {
      const jobs = (await database.lines.orderBy("job").uniqueKeys()) as string[]
      const found = await Promise.all(jobs.map((job) => database.lines.where("job").equals(job).sortBy("seq")))
      return found.flatMap((lines) => summarise(lines) ?? []).sort(newestFirst)
    },
    async close() {
      database.close()
    },
  }
}
