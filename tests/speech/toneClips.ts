/** A voice pack for tests in memory: each word is half a second of one constant level, so it can be told in a recording. */
import type { VoiceClips } from "../../src/speech/VoicePack"

export const toneRateHz = 8000

/** The word at place n has the level (n + 1) / 100 throughout. */
export const toneClips = (words: readonly string[]): VoiceClips => ({
  rateHz: toneRateHz,
  has: (name) => words.includes(name),
  read: (name) => new Float32Array(toneRateHz / 2).fill((words.indexOf(name) + 1) / 100),
})

/** Which words are in a stretch of sound, in order. */
export const wordsIn = (samples: Float32Array, words: readonly string[]): string[] => {
  const found: string[] = []
  let before = 0
  for (const sample of samples) {
    const at = Math.round(sample * 100)
    if (at !== before && at > 0) found.push(words[at - 1] ?? "?")
    before = at
  }
  return found
}
