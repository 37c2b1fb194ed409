/** A store that forgets: for tests, the CLI, and browsers that refuse storage. Keeps the very contract of the others. */
import { done, refuse } from "../facts/Outcome"
import type { LogLine } from "./LogLine"
import type { Store } from "./Store"
import { newestFirst, summarise } from "./summarise"

export const createMemoryStore = (): Store => {
  const logs = new Map<string, LogLine[]>()
  const ids = new Set<string>()
  const isTaken = (line: LogLine) => logs.get(line.job)?.some((other) => other.seq === line.seq) ?? false

  return {
    async append(lines) {
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
      return done(undefined)
    },
    async read(job) {
      return { lines: structuredClone(logs.get(job) ?? []), damaged: 0 }
    },
    async jobs() {
      return [...logs.values()].flatMap((lines) => summarise(lines) ?? []).sort(newestFirst)
    },
    async close() {},
  }
}
