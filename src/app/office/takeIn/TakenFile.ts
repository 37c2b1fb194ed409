/** What became of one file, for the list that stands at the end. */
import type { Source } from "../../../record/Source"

export interface TakenFile {
  /** The file's name; inside a zip file, with the zip's in front. */
  file: string
  kind: Source["kind"] | "not known"
  /** The job it went into; null where nothing was taken. */
  job: string | null
  /** Lines that were new, and lines that were here already. */
  fresh: number
  known: number
  /** What was wrong with the file, in plain sentences. */
  faults: string[]
  /** What happened, in one plain sentence. */
  words: string
}

/** A file of which nothing was taken. */
export const refusedFile = (file: string, because: string, kind: TakenFile["kind"] = "not known"): TakenFile => ({
  file,
  kind,
  job: null,
  fresh: 0,
  known: 0,
  faults: [],
  words: because,
})
