/** A store that forgets: for tests, the CLI, and browsers that refuse storage. Keeps the very contract of the others. */
import { done, refuse } from "../facts/Outcome"
import { isSamePlace, notThere } from "./isSamePlace"
import type { JobRow } from "./JobRow"
import type { LogLine } from "./LogLine"
import { makeRowBy, plainRows, type RowMaker } from "./RowMaker"
import type { Source } from "./Source"
import type { Store } from "./Store"
import { newestFirst } from "./summarise"
import { takenUp } from "./takenUp"

export const createMemoryStore = (maker: RowMaker = plainRows): Store => {
  const logs = new Map<string, LogLine[]>()
  const rows = new Map<string, JobRow | null>()
  const kept = new Map<string, Source>()
  const ids = new Set<string>()
  const isTaken = (line: LogLine) => logs.get(line.job)?.some((other) => other.seq === line.seq) ?? false
  const makeRow = (job: string) => rows.set(job, makeRowBy(maker, logs.get(job) ?? []))
  const allRows = () => [...rows.values()].flatMap((row) => row ?? [])

  return {
    async append(lines, from = []) {
      const fresh = lines.filter((line) => !ids.has(line.id))
      const places = fresh.map((line) => `${line.job} ${line.seq}`)
      if (fresh.some(isTaken) || new Set(places).size < places.length) {
        return refuse("Another window has already written to this job. Nothing was overwritten.")
      }
      for (const line of fresh) {
        ids.add(line.id)
        logs.set(
          line.job,
          [...(logs.get(line.job) ?? []), structuredClone(line)].sort((a, b) => a.seq - b.seq),
        )
      }
      for (const job of new Set(fresh.map((line) => line.job))) makeRow(job)
      for (const source of from) if (!kept.has(source.id)) kept.set(source.id, structuredClone(source))
      return done(undefined)
    },
    async strike(left, mark) {
      const log = logs.get(left.job) ?? []
      const at = log.findIndex((line) => isSamePlace(line, left))
      if (at < 0) return refuse(notThere)
      if (ids.has(mark.id) || isTaken(mark))
        return refuse("Another window has already written to this job. Look again.")
      ids.add(mark.id)
      logs.set(
        left.job,
        [...log.with(at, structuredClone(left)), structuredClone(mark)].sort((a, b) => a.seq - b.seq),
      )
      makeRow(left.job)
      return done(undefined)
    },
    async read(job) {
      return { lines: structuredClone(logs.get(job) ?? []), damaged: 0 }
    },
    async jobs() {
      const summaries = allRows().map(({ job, place, openedAt, lastAt, lines, inHand }) => {
        return { job, place, openedAt, lastAt, lines, inHand }
      })
      return takenUp(summaries, [...kept.values()]).sort(newestFirst)
    },
    async newest(most) {
      const byDay = allRows().sort((a, b) => (a.openedAt < b.openedAt ? 1 : -1))
      return { rows: byDay.slice(0, most), jobs: rows.size }
    },
    async rows() {
      return { rows: allRows(), stale: [...rows].flatMap(([job, row]) => (row ? [] : [job])) }
    },
    async renew(jobs) {
      return jobs.filter((job) => logs.has(job)).flatMap((job) => makeRow(job).get(job) ?? [])
    },
    async rowless() {
      return [...logs.keys()].filter((job) => !rows.has(job))
    },
    async sources(job) {
      return [...kept.values()].filter((source) => job === undefined || source.job === job)
    },
    async close() {},
  }
}
