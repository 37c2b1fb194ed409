/**
 * The chain of hashes through a log, as a job file carries it: each link is made of all before it and one line. A line
 * of which words were struck keeps the link that it first had, which the mark in the log repeats, so the chain of a file
 * saved before and of one saved after are the same.
 */
import { sha256 } from "@noble/hashes/sha2.js"
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js"
import type { LogLine } from "./LogLine"

export type StruckLine = Extract<LogLine, { type: "struck" }>

/** SHA-256 in hex; of a text, over its bytes in UTF-8. */
export const hashOf = (content: string | Uint8Array): string =>
  bytesToHex(sha256(typeof content === "string" ? utf8ToBytes(content) : content))

/** The hash over what came before and one value as JSON. */
export const linkOf = (before: string, value: unknown): string => hashOf(before + JSON.stringify(value))

/** The hash of one value alone. */
export const digestOf = (value: unknown): string => linkOf("", value)

/** The first line of a job file, on which the chain hangs. */
export const chainHead = (job: string) => ({ format: "bothhands job" as const, v: 1 as const, job })

/** The last mark on each line of which words were struck, by the line's id. */
export const marksOf = (lines: readonly LogLine[]): ReadonlyMap<string, StruckLine> =>
  new Map(lines.flatMap((line) => (line.type === "struck" ? [[line.of, line] as const] : [])))

/** The link of every line, in the order given. */
export const chainOf = (lines: readonly LogLine[]): string[] => {
  const marks = marksOf(lines)
  let before = linkOf("", chainHead(lines[0]?.job ?? ""))
  return lines.map((line) => {
    before = marks.get(line.id)?.link ?? linkOf(before, line)
    return before
  })
}
