/** Log lines for tests: a short job in the bakery, stamped with counted ids. */
import type { RecordedFact } from "../../src/facts/Fact"
import type { Draft, LogLine } from "../../src/record/LogLine"

/** Stamps drafts into lines of one job, one second apart. */
export const stampLines = (drafts: readonly Draft[], job = "bakery", from = 0): LogLine[] =>
  drafts.map(
    (draft, index) =>
      ({
        v: 1,
        id: `${job}-${from + index}`,
        job,
        at: new Date(Date.UTC(2026, 2, 2, 9, 0, from + index)).toISOString(),
        by: "worker",
        device: "test",
        seq: from + index,
        ...draft,
      }) as LogLine,
  )

export const opened: Draft = { type: "job_opened", place: "The bakery", pack: "uk-bs7671", caution: "Advice only." }

export const entry = (fact: RecordedFact, needsYes = false): Draft => ({
  type: "entry",
  fact,
  origin: { by: "voice", heard: ["h1"] },
  needsYes,
})

export const waterSize = (value: number) => entry({ kind: "conductor_csa", value, unit: "mm2", subject: "water" })
export const waterReading = (value: number | null) =>
  entry(
    { kind: "resistance", value, unit: "ohm", subject: "water", ...(value === null && { qualifier: ">" as const }) },
    true,
  )
