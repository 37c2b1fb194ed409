/**
 * Keeps one thing that only the browser's database can hold, such as a folder that the worker chose: settings are text,
 * and a folder is not. In a database of its own, so that the logs' never changes for it.
 */
import Dexie, { type Table } from "dexie"

class Handles extends Dexie {
  handles!: Table<unknown, string>
  constructor(name: string) {
    super(name)
    this.version(1).stores({ handles: "" })
  }
}

export interface KeptHandle<T> {
  /** Null where nothing is kept. */
  read(): Promise<T | null>
  /** Null: nothing is kept from now on. */
  write(handle: T | null): Promise<void>
}

/** Opens, or creates, the database of that name. What comes back is what was put in, so `T` is the caller's word. */
export const createKeptHandle = <T>(name: string): KeptHandle<T> => {
  const { handles } = new Handles(name)
  return {
    read: async () => ((await handles.get("kept")) as T | undefined) ?? null,
    write: async (handle) => {
      if (handle === null) await handles.delete("kept")
      else await handles.put(handle, "kept")
    },
  }
}
