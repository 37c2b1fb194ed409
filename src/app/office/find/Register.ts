/**
 * All jobs of this device in memory, and what they are being searched by. It outlives the screen, so that coming back
 * from a job finds the list as it was left; rows that others changed meanwhile are put in again.
 */
import { parseLocal } from "../../../interpret/LocalDay"
import type { JobRow } from "../../../record/JobRow"
import type { Source } from "../../../record/Source"
import type { Store } from "../../../record/Store"
import type { Query } from "../../../search/Condition"
import { createFinder, type Order } from "../../../search/createFinder"
import { readQuery } from "../../../search/readQuery"

export interface RegisterView {
  phase: "reading" | "ready" | "failed"
  /** Changes with the rows. */
  edition: number
  /** Jobs that are counted but not read yet: the newest stand first, and the others follow. */
  unread: number
  /** Rows that are still to be made anew, because rules have changed or rows were missing. */
  toRenew: number
}

/** What a query came to. */
export interface Search {
  query: Query
  rows: readonly JobRow[]
}

/** More than any screen shows at once. */
const firstRows = 60
/** Rows made anew between two looks at the screen. */
const batch = 8
/** Rows whose words are read into the index between two looks: some ten milliseconds. */
const wordBatch = 400

export class Register {
  readonly finder = createFinder()
  /** What the search box holds, the order of the list, and the job that was opened last. */
  query = ""
  order: Order = "newest"
  opened: string | null = null
  private view: RegisterView = { phase: "reading", edition: 0, unread: 0, toRenew: 0 }
  private readonly listeners = new Set<() => void>()
  private readonly known = new Map<string, JobRow>()
  private damaged = new Map<string, string[]>()
  private last: { asked: string; search: Search } | null = null
  private reading: Promise<void> | null = null

  constructor(private readonly store: Store) {}

  subscribe = (changed: () => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  snapshot = (): RegisterView => this.view

  /** What was wrong with the files that a job was taken in from. */
  faultsOf(job: string): readonly string[] {
    return this.damaged.get(job) ?? []
  }

  /** Searches once for the same words, order, day and rows. `now` is local time, ISO 8601. */
  search(text: string, order: Order, now: string): Search {
    const asked = [text, order, now.slice(0, 10), this.view.edition].join("|")
    if (this.last?.asked === asked) return this.last.search
    const started = performance.now()
    const today = parseLocal(now) ?? { year: 1970, month: 1, day: 1 }
    const query = readQuery(text, { today, items: [...this.finder.items().keys()] })
    const conditions = query.understood.map((one) => one.condition)
    this.last = { asked, search: { query, rows: this.finder.find(conditions, order) } }
    performance.measure("bothhands.search", { start: started })
    return this.last.search
  }

  /** Reads what is stored now; several calls at once are one. */
  refresh(): Promise<void> {
    this.reading ??= this.read().finally(() => {
      this.reading = null
    })
    return this.reading
  }

  /** Puts in the rows of jobs that another window wrote to. */
  async changed(jobs: readonly string[]): Promise<void> {
    // What is being read now may have been read before the news.
    await this.reading
    try {
      this.put(await this.store.renew(jobs))
      this.show({})
    } catch {
      // The list is read again when the window is next looked at.
    }
  }

  private async read(): Promise<void> {
    try {
      if (this.view.phase === "reading") await this.readNewest()
      const [{ rows, stale }, sources] = await Promise.all([this.store.rows(), this.store.sources()])
      this.damaged = faultsByJob(sources)
      this.put(rows)
      this.show({ phase: "ready", unread: 0 })
      await this.readWords()
      await this.renew([...stale, ...(await this.store.rowless())])
    } catch {
      if (this.view.phase === "reading") this.show({ phase: "failed" })
    }
  }

  /** Thousands of rows take a second to read; meanwhile the newest can be looked at. */
  private async readNewest(): Promise<void> {
    const { rows, jobs } = await this.store.newest(firstRows)
    if (jobs <= rows.length) return
    this.put(rows)
    this.show({ phase: "ready", unread: jobs - rows.length })
    await new Promise((fulfil) => setTimeout(fulfil))
  }

  /** In pieces, between which the page can draw and take keys. */
  private async readWords(): Promise<void> {
    do await new Promise((fulfil) => setTimeout(fulfil))
    while (this.finder.readWords(wordBatch))
  }

  private async renew(jobs: readonly string[]): Promise<void> {
    for (let at = 0; at < jobs.length; at += batch) {
      this.show({ toRenew: jobs.length - at })
      this.put(await this.store.renew(jobs.slice(at, at + batch)))
    }
    this.show({ toRenew: 0 })
  }

  private put(rows: readonly JobRow[]): void {
    const changed = rows.filter((row) => !isSame(this.known.get(row.job), row))
    for (const row of changed) this.known.set(row.job, row)
    this.finder.put(changed)
  }

  private show(change: Partial<RegisterView>): void {
    this.view = { ...this.view, ...change, edition: this.view.edition + 1 }
    for (const listener of this.listeners) listener()
  }
}

const isSame = (one: JobRow | undefined, other: JobRow) =>
  one !== undefined &&
  one.lines === other.lines &&
  one.stops === other.stops &&
  one.warns === other.warns &&
  one.kept === other.kept &&
  one.parts.length === other.parts.length

const faultsByJob = (sources: readonly Source[]): Map<string, string[]> => {
  const faults = new Map<string, string[]>()
  // Of a file that brought nothing new, nothing can be wrong here.
  for (const one of sources)
    if (one.faults.length > 0 && one.lines > 0) faults.set(one.job, [...(faults.get(one.job) ?? []), ...one.faults])
  return faults
}

const registers = new WeakMap<Store, Register>()

/** The one register of a store. */
export const registerOf = (store: Store): Register => {
  const known = registers.get(store)
  if (known) return known
  const fresh = new Register(store)
  registers.set(store, fresh)
  return fresh
}
