/**
 * Plays a stretch of a kept clip through the browser's sound graph: it starts and stops on the sample, which a media
 * element does not.
 */
import type { SoundStretch } from "../../../review/litStretch"
import type { KeptSound } from "../Desk"

/** Played on either side of the words, in seconds: times of words are a little off, and a word that begins at once is hard to hear. */
const marginSeconds = 0.15

/** Resolves at the end of it, or once `stop` says so. Rejects where the browser cannot play the clip. */
export const playStretch = async (
  { blob, from }: KeptSound,
  stretch: SoundStretch | null,
  stop: AbortSignal,
): Promise<void> => {
  const context = new AudioContext()
  try {
    const sound = await context.decodeAudioData(await blob.arrayBuffer())
    if (stop.aborted) return
    const start = stretch ? Math.max(0, stretch.start - from - marginSeconds) : 0
    const end = stretch ? Math.min(sound.duration, stretch.end - from + marginSeconds) : sound.duration
    const source = new AudioBufferSourceNode(context, { buffer: sound })
    source.connect(context.destination)
    await new Promise<void>((ended) => {
      source.onended = () => ended()
      stop.addEventListener("abort", () => ended())
      source.start(0, start, Math.max(0, end - start))
    })
  } finally {
    await context.close()
  }
}
