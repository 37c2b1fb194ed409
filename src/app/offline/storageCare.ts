/** Whether what is stored will stay, and whether there is room for more. Browsers that cannot say are believed. */

export type StorageAsked = Partial<Pick<StorageManager, "persist" | "persisted" | "estimate">>

/** Below this the page warns: our choice, no source. The ear and the voice take 8 MB, a day's job far below 1 MB. */
export const fewBytes = 50_000_000

/** Asks the browser never to clear our storage by itself; false when it refuses. It may ask the worker in turn. */
export const askToKeep = async (storage: StorageAsked | undefined): Promise<boolean> => {
  if (!storage?.persist) return true
  try {
    return (await storage.persisted?.()) || (await storage.persist())
  } catch {
    return false
  }
}

/** Whether storage is kept already, without asking for it. */
export const isKept = async (storage: StorageAsked | undefined): Promise<boolean> => {
  if (!storage?.persisted) return true
  return storage.persisted().catch(() => false)
}

/** Bytes left for this page, never below 0; null where the browser does not tell. */
export const freeBytes = async (storage: StorageAsked | undefined): Promise<number | null> => {
  const told = await storage?.estimate?.().catch(() => undefined)
  return told?.quota === undefined ? null : Math.max(0, told.quota - (told.usage ?? 0))
}
