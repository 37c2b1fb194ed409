/**
 * What the offline ear is made of on disk: an acoustic model, a small dictionary and a note that says which they are.
 * The note is read before anything else, because the rate of the sound hangs on the model that is inside.
 */
import { z } from "zod"

/** The files that every pack holds, beside `pack.json` and the licence. */
export const earFileNames = [
  "mdef",
  "means",
  "variances",
  "sendump",
  "transition_matrices",
  "feat_params.json",
  "noisedict.txt",
  "dictionary.txt",
] as const
export type EarFileName = (typeof earFileNames)[number]

export const EarPack = z.object({
  version: z.literal(1),
  /** `en-us-16k` is the good one; `en-us-8k` comes with the engine and is used where the good one cannot be fetched. */
  model: z.enum(["en-us-16k", "en-us-8k"]),
  /** Where the model came from, as package@version. */
  source: z.string(),
  licence: z.string(),
  /** Samples a second that the model was trained for. */
  rateHz: z.number().int().positive(),
  /** Size and SHA-256 of each file. */
  files: z.partialRecord(z.enum(earFileNames), z.object({ bytes: z.number().int(), sha256: z.string() })),
  /** Words of the dictionary, so that a pack that lacks some is made again. */
  words: z.number().int().nonnegative(),
})
export type EarPack = z.infer<typeof EarPack>

/** A pack in memory, ready for the engine. */
export interface EarFiles {
  pack: EarPack
  bytes: Record<EarFileName, Uint8Array>
}
