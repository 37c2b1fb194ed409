/** Writes real log lines of an invented job, for pictures and tests: what they give goes through the real projection. */
import type { RecordedFact } from "../../src/facts/Fact"
import type { Heard } from "../../src/facts/Heard"
import type { AcceptedHow, Draft } from "../../src/record/LogLine"
import { LogLine } from "../../src/record/LogLine"
import { project } from "../../src/record/project"

/** A log that grows by a line every half minute from 09:41. */
export const createMadeUpLog = (place: string) => {
  const lines: LogLine[] = []
  const heard: Record<string, Heard> = {}

  const add = (draft: Draft): string => {
    const seq = lines.length
    const at = new Date(Date.UTC(2026, 2, 2, 9, 41, seq * 30)).toISOString().replace("Z", "+00:00")
    const id = `line-${seq}`
    const stamp = { v: 1, id, job: "job-1", at, by: "worker", device: "device-1", seq }
    lines.push(LogLine.parse({ ...stamp, ...draft }))
    return id
  }

  add({ type: "job_opened", place, pack: "uk-bs7671", caution: "Advice only." })

  return {
    heard,
    /** One utterance and the entries it led to; gives their ids. */
    speak(text: string, facts: readonly RecordedFact[], how: AcceptedHow | null = "not_challenged"): string[] {
      const id = `heard-${lines.length}`
      const utterance = { id, text, alternatives: [], words: [], start: 0, end: 2, engine: "offline", margin: 8 }
      heard[id] = utterance
      add({ type: "heard", heard: utterance })
      const entries = facts.map((fact) =>
        add({ type: "entry", fact, origin: { by: "voice", heard: [id] }, needsYes: fact.kind === "resistance" }),
      )
      if (how) for (const entry of entries) add({ type: "accepted", entry, how })
      return entries
    },
    /** A value put in by hand. */
    enter(fact: RecordedFact, reason: string): string {
      return add({ type: "entry", fact, origin: { by: "hand", reason }, needsYes: false })
    },
    add,
    record: () => project(lines),
    lines: () => lines,
  }
}
