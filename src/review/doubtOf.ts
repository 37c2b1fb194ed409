/**
 * What speaks against a value that nobody has said yes to, as far as its words and the rest of the log show it. Words that
 * were taken down elsewhere come without margins, and nobody heard them read back; this is what is left to go by.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import { readBack } from "../interpret/readBack"
import { historyOf } from "../record/holding"
import type { Held, JobRecord } from "../record/JobRecord"

/** A sentence that ends so has lost its last word, and that may have named the part. */
const brokenOff = /(?:^|\s)(?:the|a|an|on|to|of|at|in|for|from|and|is|are|it's|by)[\s.,;]*$/i

const isSame = (one: RecordedFact, other: RecordedFact) =>
  one.value === other.value &&
  ("qualifier" in one ? one.qualifier : undefined) === ("qualifier" in other ? other.qualifier : undefined)

/** Another value that stood in the same place, said of another sentence and never taken back. */
const otherOf = (record: JobRecord, held: Held): Held | undefined =>
  historyOf(record, held).findLast((one) => one.withdrawn === null && !isSame(one.fact, held.fact))

/** In plain words, or null where nothing speaks against it. `said` are the sentences that it came from. */
export const doubtOf = (record: JobRecord, held: Held, said: readonly Heard[]): string | null => {
  if (held.accepted !== null || held.origin.by === "hand") return null
  const other = otherOf(record, held)
  if (other) return `It was first said otherwise: ${readBack(other.fact)}`
  return said.some(({ text }) => brokenOff.test(text)) ? "The sentence breaks off." : null
}
