/** A log as the lines that tests compare: each value that holds, with how it was accepted, sorted. */
import { showFact } from "../src/cli/showFact"
import { allHeld } from "../src/record/holding"
import type { LogLine } from "../src/record/LogLine"
import { project } from "../src/record/project"

export const recordOf = (lines: readonly LogLine[]): string[] =>
  allHeld(project(lines))
    .map((held) => `${showFact(held.fact)}, ${held.accepted ?? "waiting"}`)
    .sort()

/** What was said aloud, in order. */
export const saidIn = (lines: readonly LogLine[]): string[] =>
  lines.flatMap((line) => (line.type === "said" ? [line.words] : []))

/** What was heard and taken down, in order. */
export const heardIn = (lines: readonly LogLine[]): string[] =>
  lines.flatMap((line) => (line.type === "heard" ? [line.heard.text] : []))
