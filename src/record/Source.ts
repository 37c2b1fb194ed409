/**
 * A file that lines were taken in from, and what was wrong with it. A log shows no fault of the file it came from, so
 * this is kept beside it: what was changed or cut once stays marked, also in the next file that is saved.
 */
import { z } from "zod"

export const Source = z.object({
  /** The job and the content's hash: the same file taken in twice is one source. */
  id: z.string(),
  job: z.string(),
  /** The file's name. */
  file: z.string(),
  kind: z.enum(["job file", "transcript", "recording"]),
  /** SHA-256 of its content. */
  sha256: z.string(),
  /** When it was taken in, ISO 8601 with offset. */
  at: z.string(),
  /** Lines that were new. */
  lines: z.number().int(),
  /** Lines that the job had afterwards. */
  linesAfter: z.number().int(),
  /** Plain sentences; none for a whole and untouched file. */
  faults: z.array(z.string()),
})
export type Source = z.infer<typeof Source>
