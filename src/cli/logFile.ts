/** `log FILE`: the whole loop over a transcript or a recording. */
import { v7 } from "uuid"
import { type Exchange, type LoopRun, runLoop } from "../dialogue/runLoop"
import type { Tools } from "../dialogue/Tools"
import type { Heard } from "../facts/Heard"
import { allHeld, awaitingYes, isUnseen, unseenYet } from "../record/holding"
import type { Held } from "../record/JobRecord"
import { openWarnings } from "../record/warningKey"
import { showFact } from "./showFact"
import { exitStatus, showFinding } from "./showFindings"

export interface LogOptions {
  place: string
  startMs: number
  pack: string
  /** The app was answering while this was said: a yes in it answers the app. Else nobody heard anything read back. */
  live?: boolean
}

/** Runs the loop. Ids are new at every run; everything else depends on the utterances alone. */
export const logHeard = (
  heards: readonly Heard[],
  { place, startMs, pack, live = false }: LogOptions,
  tools: Omit<Tools, "newId">,
): LoopRun =>
  runLoop(
    heards,
    { job: v7(), place, pack, device: "command line", startMs, unheard: !live },
    { ...tools, newId: () => v7() },
  )

const showExchange = (one: Exchange): string => {
  const time = one.at.slice(11, 19)
  if ("said" in one) return `${time}   says: ${one.said}`
  return `${time} ${one.understood ? " heard" : "(heard)"}: ${one.heard}`
}

const stateOf = (held: Held): string => {
  if (isUnseen(held)) return "nobody has said yes yet"
  return held.accepted?.replaceAll("_", " ") ?? "waiting for a yes"
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
    ...held.map((one) => `  ${showFact(one.fact)}  (${stateOf(one)})`),
    "",
    "Findings:",
    ...checked.findings.map((finding) => `  ${showFinding(finding)}`),
    `${held.length} entries, ${awaitingYes(record).length} waiting for a yes, ${unseenYet(record).length} that nobody has said yes to, ${open.length} open warnings.`,
  ]
  return { lines, status }
}
