/** The copies of the page: the browser's own way to choose a folder, and its database to remember it. */
import { createKeptHandle } from "../../record/keptHandle"
import type { Store } from "../../record/Store"
import { localNow } from "../localNow"
import { Backup } from "./Backup"
import type { BackupFolder } from "./BackupFolder"

/** Not in every browser, and not yet in the library of types. */
type Picker = (order: { id: string; mode: "readwrite" }) => Promise<BackupFolder>

export const openBackup = (store: Store, trouble: (because: string) => void): Backup => {
  const { showDirectoryPicker } = globalThis as { showDirectoryPicker?: Picker }
  return new Backup({
    store,
    pick: showDirectoryPicker ? () => showDirectoryPicker({ id: "bothhands", mode: "readwrite" }) : null,
    place: createKeptHandle<BackupFolder>("bothhands-backup"),
    now: localNow,
    later: (act, ms) => void setTimeout(act, ms),
    trouble,
  })
}
