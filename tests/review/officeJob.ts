/** Jobs for the desk's tests: the sample, and short ones said to the real loop. */
import { readFileSync } from "node:fs"
import type { DialogueEvent } from "../../src/dialogue/DialogueEvent"
import { emptyDialogue } from "../../src/dialogue/emptyDialogue"
import { step } from "../../src/dialogue/step"
import type { Heard } from "../../src/facts/Heard"
import { readJobFile } from "../../src/record/jobFile"
import type { LogLine } from "../../src/record/LogLine"
import type { ChangeTools } from "../../src/review/draftChange"
import { type ReviewedJob, reviewJob } from "../../src/review/ReviewedJob"
import { realTools } from "../realTools"

export const bakeryFile = readFileSync("samples/bakery.bothhands.jsonl", "utf8")

const read = readJobFile(bakeryFile)
if (!read.ok) throw new Error(read.because)
export const bakeryLines: readonly LogLine[] = read.value.lines

export const tools = realTools()
export const review = (lines: readonly LogLine[], more = {}): ReviewedJob =>
  reviewJob({ lines, ...more }, (situation) => tools.check(situation))
export const bakery = (): ReviewedJob => review(bakeryLines)

let made = 0
export const deskTools = (): ChangeTools => ({
  interpret: tools.interpret,
  newId: () => `desk-${++made}`,
  at: "2026-03-03T08:00:00.000Z",
  by: "office",
  device: "desk",
})

export type Spoken = string | (Partial<Heard> & { text: string }) | { tap: "confirm" | "undo" | "deny" }

/** The log that these sentences give, each a minute after the last. */
export const logOf = (spoken: readonly Spoken[], before: readonly LogLine[] = []): LogLine[] => {
  let count = before.length
  const all = { ...tools, newId: () => `l${++count}` }
  const at = (minute: number) => new Date(Date.UTC(2026, 2, 2, 9, minute)).toISOString()
  const first: DialogueEvent =
    before.length > 0
      ? { type: "resumed", at: at(0), lines: before }
      : { type: "opened", at: at(0), job: "hall", place: "The village hall", pack: "uk-bs7671" }
  const lines = [...before]
  let state = emptyDialogue("test")
  const take = (event: DialogueEvent) => {
    const stepped = step(state, event, all)
    state = stepped.state
    for (const effect of stepped.effects) if (effect.do === "append") lines.push(...effect.lines)
  }
  take(first)
  for (const [index, one] of spoken.entries()) {
    if (typeof one === "object" && "tap" in one) {
      take({ type: "tapped", at: at(index + 1), act: { kind: one.tap, value: true } })
      continue
    }
    const given = typeof one === "string" ? { text: one } : one
    const id = `h${before.length}-${index}`
    const plain = { id, alternatives: [], words: [], start: index * 10, end: index * 10 + 2, margin: null }
    take({ type: "heard", at: at(index + 1), heard: { engine: "scripted", ...plain, ...given } })
  }
  return lines
}
