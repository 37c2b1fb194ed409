/** A draft as a line of a log. The order of its members is the order that they are hashed in. */
import type { Draft, LogLine } from "./LogLine"

/** What every line carries besides its own content. */
export type LineStamp = Pick<LogLine, "id" | "job" | "at" | "by" | "device" | "seq">

export const stampLine = (draft: Draft, { id, job, at, by, device, seq }: LineStamp): LogLine =>
  ({ v: 1, id, job, at, by, device, seq, ...draft }) as LogLine
