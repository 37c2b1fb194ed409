/** Makes room on a full device: the older half of the kept sound goes, as any line is worth more. */
import type { MakeRoom } from "./JobsDatabase"

/** `told` is given how many clips went. */
export const dropOldestSound =
  (told: (clips: number) => void): MakeRoom =>
  async (database) => {
    const { clips, sounds } = database
    const keys = await clips.orderBy("at").primaryKeys()
    const oldest = keys.slice(0, Math.ceil(keys.length / 2))
    await database.transaction("rw", clips, sounds, async () => {
      await sounds.bulkDelete(oldest)
      await clips.bulkDelete(oldest)
    })
    if (oldest.length > 0) told(oldest.length)
    return oldest.length > 0
  }
