/**
 * What was said on a job as WebVTT: the worker's words and the app's, told apart by voice tags, timed from the job's first
 * line. The log keeps when the app began to speak and not how long it spoke, so the ends of its cues are estimated.
 */
import type { LogLine } from "../record/LogLine"
import { type Cue, writeCues } from "./writeCues"

/** About the pace of a calm voice; common practice, no source. Only the ends of the app's cues rest on it. */
const wordsPerSecond = 2.5
const leastSeconds = 0.5

/** No visit is longer; a line that says so has a damaged time, and is taken to follow the one before. */
const mostSeconds = 7 * 86_400

/** Cues in order of their start. The app's own lines follow one another, since it has one voice. */
export const saidCues = (lines: readonly LogLine[]): Cue[] => {
  const ordered = [...lines].sort((a, b) => a.seq - b.seq)
  const startMs = Date.parse(ordered[0]?.at ?? "")
  let voiceFree = 0
  let last = 0
  const secondsOf = (line: LogLine): number => {
    const seconds = (Date.parse(line.at) - startMs) / 1000
    if (seconds >= 0 && seconds <= mostSeconds) last = seconds
    return last
  }
  const cues = ordered.flatMap((line): Cue[] => {
    const at = secondsOf(line)
    if (line.type === "heard") {
      const { start, end, text, engine } = line.heard
      const from = Math.max(0, at - Math.max(0, end - start))
      const speaker = engine === "typed" ? "Worker, typed" : "Worker"
      return [{ start: from, end: Math.max(at, from + 0.01), text, speaker }]
    }
    if (line.type !== "said") return []
    const begin = Math.max(at, voiceFree)
    voiceFree = begin + Math.max(leastSeconds, line.words.split(/\s+/).length / wordsPerSecond)
    return [{ start: begin, end: voiceFree, text: line.words, speaker: "Bothhands" }]
  })
  return cues.sort((a, b) => a.start - b.start)
}

/** The job as the text of a WebVTT file; faults of the job file stand in it as notes. */
export const saidVtt = (lines: readonly LogLine[], faults: readonly string[] = []): string =>
  writeCues(saidCues(lines), [
    "Times run from the first line of the job. How long Bothhands spoke is estimated.",
    ...faults.map((fault) => `Fault of the job file: ${fault}`),
  ])
