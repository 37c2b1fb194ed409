/** What was corrected or taken back on the way, warnings that were since put right, and what was written after signing. */
import type { LogLine } from "../../record/LogLine"
import { warningKey } from "../../record/warningKey"
import type { ExportedJob } from "../ExportedJob"
import { whatOf } from "../factWords"
import type { ValueTrail } from "../valueTrail"
import { clockWords, momentWords } from "./momentWords"
import { itemName, quantity, sentence } from "./quantity"
import type { Block, Cell } from "./Report"
import { entryMark } from "./sayState"
import { cameFrom } from "./valueSections"

const heading = (text: string): Block => ({ kind: "heading", level: 2, text })

const corrections = (trails: readonly ValueTrail[], standing: ReadonlyMap<string, ValueTrail>, job: ExportedJob) =>
  trails
    .filter(({ holds }) => !holds)
    .map((trail): Cell[] => {
      const { held, state } = trail
      const now = standing.get(held.slot)
      return [
        { text: itemName(held.item) },
        { text: `${sentence(whatOf(held.fact))} ${quantity(held.fact)}` },
        {
          text: state,
          mark: entryMark(state),
          under: now ? `now ${quantity(now.held.fact)}` : "nothing stands in its place",
        },
        { text: cameFrom(trail) },
        { text: clockWords(held.at, job.record.openedAt) },
      ]
    })

const putRight = ({ record, findings }: ExportedJob): Block[] => {
  const current = new Set(findings.map(warningKey))
  const past = record.warnings.filter((one) => !current.has(one.warning))
  if (past.length === 0) return []
  const rows = past.map((one): Cell[] => [
    { text: itemName(one.warning.split("|")[1] ?? "job") },
    { text: one.said },
    { text: one.kept === null ? "the values behind it were changed" : `kept because: ${one.kept}; changed since` },
  ])
  return [
    heading("Warnings that no longer hold"),
    { kind: "table", heads: ["Part", "What was said aloud", "What became of it"], shares: [0.2, 0.5, 0.3], rows },
  ]
}

type Told = { what: string; about: string }

const tell = (line: LogLine, trailOf: ReadonlyMap<string, ValueTrail>): Told | null => {
  const about = (entry: string) => {
    const held = trailOf.get(entry)?.held
    return held
      ? `${itemName(held.item)}, ${whatOf(held.fact)} ${quantity(held.fact)}`
      : "an entry that is not in the file"
  }
  switch (line.type) {
    case "signed_off":
      return {
        what: "signed off",
        about: line.name === undefined ? `as ${line.role}` : `as ${line.role}: ${line.name}`,
      }
    case "reopened":
      return { what: "opened again", about: line.because }
    case "entry":
      return { what: "value added", about: about(line.id) }
    case "withdrawn":
      return {
        what: line.because === "denied" ? "taken back" : "undone",
        about: line.reason === undefined ? about(line.entry) : `${about(line.entry)}; because: ${line.reason}`,
      }
    case "kept":
      return { what: "warning kept", about: line.reason }
    default:
      return null
  }
}

const afterSigning = ({ lines }: ExportedJob, trails: readonly ValueTrail[]): Block[] => {
  const ordered = [...lines].sort((a, b) => a.seq - b.seq)
  const first = ordered.findIndex((line) => line.type === "signed_off")
  if (first < 0) return []
  const trailOf = new Map(trails.map((trail) => [trail.held.entry, trail]))
  const rows = ordered.slice(first).flatMap((line): Cell[][] => {
    const told = tell(line, trailOf)
    return told ? [[{ text: momentWords(line.at) }, { text: line.by }, { text: told.what }, { text: told.about }]] : []
  })
  return [
    heading("Signing, and what was written after it"),
    { kind: "table", heads: ["When", "By", "What", "About"], shares: [0.26, 0.14, 0.18, 0.42], rows },
  ]
}

/** The sections; the first always stands there. */
export const changeSections = (job: ExportedJob, trails: readonly ValueTrail[]): Block[] => {
  const standing = new Map(trails.filter(({ holds }) => holds).map((trail) => [trail.held.slot, trail]))
  const rows = corrections(trails, standing, job)
  const body: Block =
    rows.length > 0
      ? {
          kind: "table",
          heads: ["Part", "Was", "What became of it", "Came from", "Time"],
          shares: [0.17, 0.22, 0.21, 0.3, 0.1],
          rows,
        }
      : { kind: "text", text: "No value was corrected or taken back." }
  return [heading("Corrections"), body, ...putRight(job), ...afterSigning(job, trails)]
}
