/**
 * The sound of one utterance, kept beside the log of the device that heard it. It is worth less than any line: it is in
 * no job file, may be gone at any time, and the log is whole without it.
 */
import { z } from "zod"
import type { Outcome } from "../facts/Outcome"

/** What is known of a clip without its sound. All times are seconds on the clock of the utterance's own words. */
export const ClipNote = z.object({
  v: z.literal(1),
  job: z.string().min(1),
  /** Id of the utterance; the one line of the log that holds it is found by it. */
  heard: z.string().min(1),
  /** When it was kept, ISO 8601. */
  at: z.string(),
  /** Where its first sample stands: a little before the first word. */
  from: z.number(),
  seconds: z.number().nonnegative(),
  /** Media type, such as `audio/ogg; codecs=opus`. */
  type: z.string(),
  bytes: z.number().int().nonnegative(),
  /** Stretches that were silenced since private words were struck. */
  silenced: z.array(z.object({ start: z.number(), end: z.number() })).default([]),
})
export type ClipNote = z.infer<typeof ClipNote>

export interface Clip extends ClipNote {
  sound: Uint8Array
}

/** Names one clip. Ids of utterances out of files are only unique within their job. */
export type ClipKey = Pick<ClipNote, "job" | "heard">

export interface ClipStore {
  /** Keeps a clip, in the place of an earlier one of the same utterance. */
  put(clip: Clip): Promise<Outcome>
  read(key: ClipKey): Promise<Clip | null>
  /** All that is kept, without the sound itself. A note that cannot be read has neither sound nor place in it. */
  notes(): Promise<ClipNote[]>
  drop(keys: readonly ClipKey[]): Promise<Outcome>
  /** Drops every clip, readable or not. */
  clear(): Promise<Outcome>
  close(): Promise<void>
}
