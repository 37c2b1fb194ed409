/**
 * The browser's store, on IndexedDB by way of Dexie. It asks for strict durability: without it, Chromium answers before
 * the lines have left the operating system's cache, and a power cut could still take a value that was read back as done.
 */
import Dexie, { type Table } from "dexie"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { isSamePlace, notThere } from "./isSamePlace"
import { JobRow } from "./JobRow"
import { LogLine } from "./LogLine"
import { makeRowBy, plainRows, type RowMaker } from "./RowMaker"
import { Source } from "./Source"
import type { FoundRows, Store } from "./Store"
import { newestFirst } from "./summarise"
import { takenUp } from "./takenUp"

/** A row with the version of what made it; `row` is null where none could be made. */
interface StoredRow {
  job: string
  version: string
  row: JobRow | null
}

class Jobs extends Dexie {
  lines!: Table<LogLine, string>
  rows!: Table<StoredRow, string>
  sources!: Table<Source, string>
  constructor(name: string) {
    super(name, { chromeTransactionDurability: "strict" })
    this.version(1).stores({ lines: "id, job, &[job+seq]" })
    // The rows of what is there already are left to be made later: an upgrade must not read every log there is.
    this.version(2)
      .stores({ rows: "job", sources: "id, job" })
      .upgrade(async (old) => {
        const jobs = (await old.table("lines").orderBy("job").uniqueKeys()) as string[]
        await old.table("rows").bulkAdd(jobs.map((job) => ({ job, version: "", row: null })))
      })
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

class IndexedDbStore implements Store {
  private readonly database: Jobs

  constructor(
    name: string,
    private readonly maker: RowMaker,
  ) {
    this.database = new Jobs(name)
  }

  async append(lines: readonly LogLine[], from: readonly Source[] = []): Promise<Outcome> {
    const { database } = this
    try {
      await database.transaction("rw", database.lines, database.rows, database.sources, async () => {
        const found = await database.lines.bulkGet(lines.map((line) => line.id))
        const fresh = lines.filter((_, index) => found[index] === undefined)
        await database.lines.bulkAdd(fresh)
        await this.putRows([...new Set(fresh.map((line) => line.job))])
        const known = await database.sources.bulkGet(from.map((source) => source.id))
        await database.sources.bulkAdd(from.filter((_, index) => known[index] === undefined))
      })
      return done(undefined)
    } catch (error) {
      return refuse(sayWhy(error))
    }
  }

  async strike(left: LogLine, mark: LogLine): Promise<Outcome> {
    const { database } = this
    try {
      return await database.transaction("rw", database.lines, database.rows, async () => {
        const stored = LogLine.safeParse(await database.lines.get(left.id))
        if (!stored.success || !isSamePlace(stored.data, left)) return refuse(notThere)
        await database.lines.put(left)
        await database.lines.add(mark)
        await this.putRows([left.job])
        return done(undefined)
      })
    } catch (error) {
      return refuse(sayWhy(error))
    }
  }

  async read(job: string) {
    const rows = await this.database.lines.where("job").equals(job).sortBy("seq")
    const parsed = rows.map((row) => LogLine.safeParse(row))
    return {
      lines: parsed.flatMap((one) => (one.success ? [one.data] : [])),
      damaged: parsed.filter((one) => !one.success).length,
    }
  }

  async jobs() {
    const [missing, found, sources] = await Promise.all([this.rowless(), this.rows(), this.sources()])
    const shown = new Set(found.rows.map((row) => row.job))
    const made = await this.renew([...missing, ...found.stale.filter((job) => !shown.has(job))])
    const summaries = [...found.rows, ...made].map(({ job, place, openedAt, lastAt, lines, inHand }) => {
      return { job, place, openedAt, lastAt, lines, inHand }
    })
    return takenUp(summaries, sources).sort(newestFirst)
  }

  async rows(): Promise<FoundRows> {
    const stored = await this.database.rows.toArray()
    const parsed = stored.map(({ row }) => JobRow.safeParse(row))
    const isStale = (index: number) => !parsed[index]?.success || stored[index]?.version !== this.maker.version
    return {
      rows: parsed.flatMap((one) => (one.success ? [one.data] : [])),
      stale: stored.flatMap(({ job }, index) => (isStale(index) ? [job] : [])),
    }
  }

  async renew(jobs: readonly string[]): Promise<JobRow[]> {
    if (jobs.length === 0) return []
    const { database } = this
    return database.transaction("rw", database.lines, database.rows, () => this.putRows(jobs))
  }

  async rowless() {
    const { database } = this
    const [jobs, known] = await Promise.all([
      database.lines.orderBy("job").uniqueKeys() as Promise<unknown> as Promise<string[]>,
      database.rows.toCollection().primaryKeys(),
    ])
    const rows = new Set(known)
    return jobs.filter((job) => !rows.has(job))
  }

  async sources(job?: string): Promise<Source[]> {
    const { sources } = this.database
    const stored = await (job === undefined ? sources.toArray() : sources.where("job").equals(job).toArray())
    return stored.flatMap((one) => Source.safeParse(one).data ?? [])
  }

  async close() {
    this.database.close()
  }

  /** Inside a transaction: makes and keeps the rows of these jobs. */
  private async putRows(jobs: readonly string[]): Promise<JobRow[]> {
    const made: StoredRow[] = []
    for (const job of jobs) {
      const { lines } = await this.read(job)
      made.push({ job, version: this.maker.version, row: makeRowBy(this.maker, lines) })
    }
    await this.database.rows.bulkPut(made)
    return made.flatMap(({ row }) => row ?? [])
  }
}

/** Opens, or creates, the database of that name. */
export const createIndexedDbStore = (name = "bothhands", maker: RowMaker = plainRows): Store =>
  new IndexedDbStore(name, maker)
