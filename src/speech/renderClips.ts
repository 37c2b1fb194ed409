/** A plan of clips as one stretch of sound. The app plays it, and tests and the recogniser hear the very same samples. */
import { joinSamples } from "./joinSamples"
import type { ClipPiece } from "./planClips"
import type { VoiceClips } from "./VoicePack"

/** Samples at the pack's own rate. A `pace` above 1 shortens the gaps. */
export const renderClips = (pieces: readonly ClipPiece[], clips: VoiceClips, pace = 1): Float32Array => {
  const parts = pieces.map((piece) =>
    "clip" in piece ? clips.read(piece.clip) : new Float32Array(Math.round((piece.gapMs / 1000 / pace) * clips.rateHz)),
  )
  return joinSamples(parts)
}
