/** A signed record that changes is no longer signed: the line that says so comes right before the change. */
import type { JobRecord } from "./JobRecord"
import type { Draft, LogLine } from "./LogLine"

/** What changes in a record when such a line is added; lines of other types only say or ask. */
const changes: Partial<Record<LogLine["type"], string>> = {
  entry: "a value was put on the record",
  accepted: "a value was answered",
  withdrawn: "a value was taken back",
  kept: "a warning was kept",
  struck: "words were struck",
}

/** The line that has to stand before `draft`, or null. `reason` is why the change is made, as far as it was said. */
export const reopeningFor = (record: JobRecord, draft: Draft, reason?: string): Draft | null => {
  const change = changes[draft.type]
  if (!change || record.signatures.length === 0) return null
  return { type: "reopened", because: `After signing, ${change}${reason ? `: ${reason}` : ""}.` }
}
