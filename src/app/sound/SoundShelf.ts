/** What the settings show of the kept sound, and the one thing that they do with it. */
import type { Outcome } from "../../facts/Outcome"
import type { ClipStore } from "../../record/Clip"

export interface SoundSum {
  clips: number
  bytes: number
}

export interface SoundShelf {
  sum(): Promise<SoundSum>
  /** Deletes all of it; every line of every log stays. */
  clear(): Promise<Outcome>
}

export const createSoundShelf = (clips: ClipStore): SoundShelf => ({
  sum: async () => {
    const notes = await clips.notes()
    return { clips: notes.length, bytes: notes.reduce((sum, { bytes }) => sum + bytes, 0) }
  },
  clear: () => clips.clear(),
})
