/**
 * A job that two devices carried on with has two logs that begin alike and then differ. Neither may be lost or woven into
 * the other, so the one that comes second becomes a job of its own: see D29. Its ids are made from the old ones, so that
 * the same file again, or a longer one from the same device, finds the copy that is there.
 */
import { v5 } from "uuid"
import { chainHead, chainOf, digestOf, linkOf } from "./chain"
import type { LogLine } from "./LogLine"

/** A fixed name space, made once at random, for ids that have to come out the same each time. */
const nameSpace = "0a3f2f6e-7f0b-4c55-9d5e-4b6d4f3b8a10"

/** The id that a content has, whoever makes it: a UUID of version 5. */
export const idOf = (content: string): string => v5(content, nameSpace)

/** The lines of a file as those of a second copy; `parting` is its first line that is not the stored log's. */
export const asSecondCopy = (lines: readonly LogLine[], parting: LogLine): LogLine[] => {
  const copyOf = parting.job
  const job = idOf(`${copyOf} ${parting.id}`)
  const ids = new Map(lines.map((line) => [line.id, idOf(`${job} ${line.id}`)]))
  const copied = lines.map((line): LogLine => {
    const copy = { ...(renamed(line, ids) as LogLine), job }
    if (copy.type === "job_opened") return { ...copy, copyOf }
    if (copy.type !== "signed_off") return copy
    // What was signed is the other job's record. Who signed, and when, still stands.
    const { over: _, ...signed } = copy
    return signed
  })
  return withMarksMended(copied)
}

/** Ids stand alone, or between bars in the names of warnings. */
const renamed = (value: unknown, ids: ReadonlyMap<string, string>): unknown => {
  if (typeof value === "string") {
    if (ids.has(value)) return ids.get(value)
    return value.includes("|")
      ? value
          .split("|")
          .map((part) => ids.get(part) ?? part)
          .join("|")
      : value
  }
  if (Array.isArray(value)) return value.map((one) => renamed(one, ids))
  if (value === null || typeof value !== "object") return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, renamed(one, ids)]))
}

/** A mark of struck words proves the line's place in the chain; in the copy's own chain the hashes are others. */
const withMarksMended = (lines: readonly LogLine[]): LogLine[] => {
  const mended = [...lines]
  for (const [at, mark] of lines.entries()) {
    const of = mark.type === "struck" ? mended.findIndex((line) => line.id === mark.of) : -1
    const left = mended[of]
    if (mark.type !== "struck" || !left) continue
    const before = chainOf(mended)[of - 1] ?? linkOf("", chainHead(mark.job))
    mended[at] = { ...mark, before, link: linkOf(before, left), left: digestOf(left) }
  }
  return mended
}
