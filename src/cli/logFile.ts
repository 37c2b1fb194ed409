/** `log FILE`: the whole loop over a transcript or a recording, as if it were happening now. */
import { v7 } from "uuid"
import { type Exchange, type LoopRun, runLoop } from "../dialogue/runLoop"
import type { Tools } from "../dialogue/Tools"
import type { Heard } from "../facts/Heard"
import { allHeld, awaitingYes } from "../record/holding"
import { openWarnings } from "../record/warningKey"
import { showFact } from "./showFact"
import { exitStatus, showFinding } from "./showFindings"

export interface LogOptions {
  place: string
  startMs: number
  pack: string
}

/** Runs the loop. Ids are new at every run; everything else depends on the utterances alone. */
export const logHeard = (heards: readonly Heard[], options: LogOptions, tools: Omit<Tools, "newId">): LoopRun =>
  runLoop(
    heards,
    { job: v7(), place: options.place, pack: options.pack, device: "command line", startMs: options.startMs },
    { ...tools, newId: () => v7() },
  )

const showExchange = (one: Exchange): string => {
  const time = one.at.slice(11, 19)
  if ("said" in one) return `${time}   says: ${one.said}`
  return `${time} ${one.understood ? " heard" : "(heard)"}: ${one.heard}`
}

/** What happened, what stands on record, and what the rules say of it, as lines of text or of JSON. */
export const printRun = (run: LoopRun, asJson: boolean): { lines: string[]; status: 0 | 1 } => {
  const { record, checked } = run.state
  const held = allHeld(record)
  const open = openWarnings(record, checked.findings)
  const status = exitStatus(record, checked.findings)
  if (asJson) {
    const lines = [
      ...run.exchanges.map((one) => JSON.stringify(one)),
      ...held.map((one) => JSON.stringify({ entry: one.fact, accepted: one.accepted, heard: one.origin })),
      ...checked.findings.map((finding) => JSON.stringify({ finding, open: open.includes(finding) })),
    ]
    return { lines, status }
  }
  const lines = [
    ...run.exchanges.map(showExchange),
    "",
    "On record:",
    ...held.map((one) => `  ${showFact(one.fact)}  (${one.accepted?.replaceAll("_", " ") ?? "waiting for a yes"})`),
    "",
    "Findings:",
    ...checked.findings.map((finding) => `  ${showFinding(finding)}`),
    `${held.length} entries, ${awaitingYes(record).length} waiting for a yes, ${open.length} open warnings.`,
  ]
  return { lines, status }
}
