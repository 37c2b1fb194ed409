/** One utterance as an ear gave it, before anybody has made sense of it. */
import { z } from "zod"

/** Below this margin the ear itself was in doubt. See `src/speech` for how margins are made. */
export const sureMargin = 1

/** One word with its place in the sound (seconds from the start of the listening) and the engine's own score, 0 to 1. */
export const HeardWord = z.object({
  text: z.string(),
  start: z.number(),
  end: z.number(),
  score: z.number().optional(),
})
export type HeardWord = z.infer<typeof HeardWord>

export const Heard = z.object({
  /** Unique, made by the ear. */
  id: z.string(),
  /** Best text, as the engine wrote it. */
  text: z.string().max(20_000),
  /** Other readings of the same sound, best first. */
  alternatives: z.array(z.string()).default([]),
  words: z.array(HeardWord).default([]),
  /** Seconds from the start of the recording or of the listening. */
  start: z.number(),
  end: z.number(),
  /** Which ear: "offline", "typed", "transcript", "browser", "scripted". */
  engine: z.string(),
  /**
   * How far the answer beat its rivals: 1 and more is plain, below 1 the ear was in doubt and `alternatives` holds the
   * nearest rival; null where the engine cannot tell. A bare score is never used to accept.
   */
  margin: z.number().nullable().default(null),
})
export type Heard = z.infer<typeof Heard>
