/**
 * The fallback voice on disk: one file with every word packed one after the other, and a note that says where each lies.
 * The packed file carries a part of its own hash in its name, so that an old copy in a browser's cache is never read
 * with a new note.
 */
import { z } from "zod"
import { decodeAdpcm } from "./adpcm"

/** First byte, number of samples, the packing's start state, and how it was spelled for the synthesiser if not as named. */
const Place = z.tuple([z.int().nonnegative(), z.int().positive(), z.int().min(0).max(88), z.string().optional()])

export const VoicePack = z.object({
  version: z.literal(1),
  /** How the clips were made, beside their words: a clip of another recipe is not used again. */
  recipe: z.string(),
  /** Which synthesiser and voice spoke it. */
  voice: z.string(),
  licence: z.string(),
  rateHz: z.int().positive(),
  file: z.string().regex(/^clips-[0-9a-f]{12}\.bin$/),
  bytes: z.int().positive(),
  /** By the words in lower case; the name of the letter b is "letter:b". */
  clips: z.record(z.string(), Place),
})
export type VoicePack = z.infer<typeof VoicePack>

/** A pack in memory. */
export interface VoiceClips {
  rateHz: number
  has(name: string): boolean
  /** Samples of one clip, silent for a name that is not there. */
  read(name: string): Float32Array
}

/** Throws when the bytes are not those that the note speaks of. */
export const openVoicePack = (pack: VoicePack, bytes: Uint8Array): VoiceClips => {
  if (bytes.length !== pack.bytes) throw new Error(`The voice has ${bytes.length} bytes instead of ${pack.bytes}`)
  const places = new Map(Object.entries(pack.clips))
  return {
    rateHz: pack.rateHz,
    has: (name) => places.has(name),
    read: (name) => {
      const place = places.get(name)
      if (!place) return new Float32Array(0)
      const [from, count, startStep] = place
      return decodeAdpcm({ bytes: bytes.subarray(from, from + ((count + 1) >> 1)), startStep }, count)
    },
  }
}
