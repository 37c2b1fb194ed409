/** The kept sound in the browser's database, in tables of its own beside the logs. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type Clip, type ClipKey, ClipNote, type ClipStore } from "./Clip"
import { isFull, JobsDatabase, pageDatabase } from "./JobsDatabase"

const sayWhy = (error: unknown) =>
  isFull(error)
    ? "The storage of this device is full. The sound was not kept; nothing of the job was lost."
    : "This browser could not change the kept sound."

const keyOf = ({ job, heard }: ClipKey): [string, string] => [job, heard]

class IndexedDbClips implements ClipStore {
  private readonly database: JobsDatabase

  constructor(name: string) {
    this.database = new JobsDatabase(name)
  }

  put({ sound, ...note }: Clip) {
    return this.change(async ({ clips, sounds }) => {
      await sounds.put({ job: note.job, heard: note.heard, sound })
      await clips.put(ClipNote.parse(note))
    })
  }

  async read(key: ClipKey): Promise<Clip | null> {
    const [note, stored] = await Promise.all([
      this.database.clips.get(keyOf(key)),
      this.database.sounds.get(keyOf(key)),
    ])
    const known = ClipNote.safeParse(note)
    return known.success && stored?.sound instanceof Uint8Array ? { ...known.data, sound: stored.sound } : null
  }

  async notes(): Promise<ClipNote[]> {
    const stored = await this.database.clips.toArray()
    return stored.flatMap((note) => ClipNote.safeParse(note).data ?? [])
  }

  drop(keys: readonly ClipKey[]) {
    return this.change(async ({ clips, sounds }) => {
      await clips.bulkDelete(keys.map(keyOf))
      await sounds.bulkDelete(keys.map(keyOf))
    })
  }

  clear() {
    return this.change(async ({ clips, sounds }) => {
      await clips.clear()
      await sounds.clear()
    })
  }

  async close() {
    this.database.close()
  }

  private async change(work: (tables: Pick<JobsDatabase, "clips" | "sounds">) => Promise<void>): Promise<Outcome> {
    const { database } = this
    try {
      await database.transaction("rw", database.clips, database.sounds, () => work(database))
      return done(undefined)
    } catch (error) {
      return refuse(sayWhy(error))
    }
  }
}

/** Opens, or creates, the tables of sound in the database of that name. */
export const createIndexedDbClips = (name = pageDatabase): ClipStore => new IndexedDbClips(name)
