/**
 * The browser's store, on IndexedDB by way of Dexie. Where the device is full, what is worth less than a line may
 * make room, and the line is written again.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { isSamePlace, notThere } from "./isSamePlace"
import { JobRow } from "./JobRow"
import { errorNames, isFull, JobsDatabase, type MakeRoom, pageDatabase, type StoredRow } from "./JobsDatabase"
import { LogLine } from "./LogLine"
import { makeRowBy, plainRows, type RowMaker } from "./RowMaker"
import { Source } from "./Source"
import type { FoundRows, Store } from "./Store"
import { newestFirst } from "./summarise"
import { takenUp } from "./takenUp"

/** Why a write failed, in words for the worker. */
const sayWhy = (error: unknown): string => {
  if (isFull(error)) return "The storage of this device is full. Free some space; nothing was lost."
  if (errorNames(error).some((name) => name === "ConstraintError" || name === "BulkError")) {
    return "Another window has already written to this job. Nothing was overwritten."
  }
  return "This browser could not save to its storage. Keep the page open and export the job."
}

class IndexedDbStore implements Store {
  private readonly database: JobsDatabase

  constructor(
    name: string,
    private readonly maker: RowMaker,
    private readonly makeRoom: MakeRoom,
  ) {
    this.database = new JobsDatabase(name)
  }

  async append(lines: readonly LogLine[], from: readonly Source[] = []): Promise<Outcome> {
    const { database } = this
    return this.write(() =>
      database.transaction("rw", database.lines, database.rows, database.sources, async () => {
        const found = await database.lines.bulkGet(lines.map((line) => line.id))
        const fresh = lines.filter((_, index) => found[index] === undefined)
        await database.lines.bulkAdd(fresh)
        await this.putRows([...new Set(fresh.map((line) => line.job))])
        const known = await database.sources.bulkGet(from.map((source) => source.id))
        await database.sources.bulkAdd(from.filter((_, index) => known[index] === undefined))
        return done(undefined)
      }),
    )
  }

  async strike(left: LogLine, mark: LogLine): Promise<Outcome> {
    const { database } = this
    return this.write(() =>
      database.transaction("rw", database.lines, database.rows, async () => {
        const stored = LogLine.safeParse(await database.lines.get(left.id))
        if (!stored.success || !isSamePlace(stored.data, left)) return refuse(notThere)
        await database.lines.put(left)
        await database.lines.add(mark)
        await this.putRows([left.job])
        return done(undefined)
      }),
    )
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

  async newest(most: number) {
    const { rows } = this.database
    const [stored, jobs] = await Promise.all([
      rows.orderBy("row.openedAt").reverse().limit(most).toArray(),
      rows.count(),
    ])
    return { rows: stored.flatMap(({ row }) => JobRow.safeParse(row).data ?? []), jobs }
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

  private async write(work: () => PromiseLike<Outcome>): Promise<Outcome> {
    try {
      return await work()
    } catch (error) {
      if (isFull(error) && (await this.makeRoom(this.database).catch(() => false))) return this.write(work)
      return refuse(sayWhy(error))
    }
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

/** Opens, or creates, the database of that name. `makeRoom` is asked for room before a line is refused. */
export const createIndexedDbStore = (
  name = pageDatabase,
  maker: RowMaker = plainRows,
  makeRoom: MakeRoom = async () => false,
): Store => new IndexedDbStore(name, maker, makeRoom)
