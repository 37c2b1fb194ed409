/**
 * How far a job's log can be relied on: whether lines are missing, and what was wrong with the files they came from. The
 * chain of hashes shows a careless or late change; whoever rewrites a whole file can make a new chain, so its end is shown
 * for comparing with what was noted elsewhere, such as a signature.
 */
import { chainOf } from "../record/chain"
import { type FaultKind, faultKind } from "../record/faultKind"
import type { LogLine } from "../record/LogLine"

export interface Trust {
  state: "whole" | FaultKind
  /** In plain words; none where the log is whole. */
  faults: string[]
  lines: number
  /** Lines of which words were struck. */
  struck: number
  /** The last hash of the chain. */
  end: string
}

/** Places in the log at which nothing stands. Only logs of one device are without gaps by their nature. */
const gapsIn = (lines: readonly LogLine[]): number => {
  if (new Set(lines.map((line) => line.device)).size > 1) return 0
  return Math.max(0, ...lines.map((line) => line.seq + 1)) - new Set(lines.map((line) => line.seq)).size
}

const worst: readonly FaultKind[] = ["changed", "cut", "lost"]

/** `faults` are those of the files that lines came from; `damaged` counts stored lines that could not be read. */
export const trustOf = (lines: readonly LogLine[], faults: readonly string[], damaged: number): Trust => {
  const gaps = gapsIn(lines)
  const lost = damaged > 0 ? [`${damaged} stored ${damaged === 1 ? "line" : "lines"} could not be read.`] : []
  const missing = gaps > damaged ? [`${gaps - damaged} of the lines before the last one are missing.`] : []
  const all = [...faults, ...lost, ...missing]
  const kinds = all.map(faultKind)
  return {
    state: worst.find((kind) => kinds.includes(kind)) ?? "whole",
    faults: all,
    lines: lines.length,
    struck: new Set(lines.flatMap((line) => (line.type === "struck" ? [line.of] : []))).size,
    end: chainOf(lines).at(-1) ?? "",
  }
}
