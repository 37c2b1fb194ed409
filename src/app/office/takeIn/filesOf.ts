/** The files in what was dropped or picked, those inside folders too, each by its path. */
import type { NamedFile } from "./TakeIn"

/** Files that systems put beside others and that nobody means. */
const isMeant = (name: string) => !/(^|\/)(\.|Thumbs\.db$|desktop\.ini$|__MACOSX\/)/.test(name)

export const filesPicked = (picked: FileList | null): NamedFile[] =>
  [...(picked ?? [])]
    .map((file) => ({ name: file.webkitRelativePath || file.name, file }))
    .filter(({ name }) => isMeant(name))

const readEntry = async (entry: FileSystemEntry, path: string): Promise<NamedFile[]> => {
  const name = path + entry.name
  if (!isMeant(name)) return []
  if (entry.isFile) {
    const file = await new Promise<File | null>((fulfil) =>
      (entry as FileSystemFileEntry).file(fulfil, () => fulfil(null)),
    )
    return file ? [{ name, file }] : []
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader()
  const found: NamedFile[] = []
  // A folder hands over its entries some at a time, and none at its end.
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((fulfil) => reader.readEntries(fulfil, () => fulfil([])))
    if (some.length === 0) return found
    for (const one of some) found.push(...(await readEntry(one, `${name}/`)))
  }
}

/** What was dropped has to be looked at at once: the browser takes it away with the event. */
export const filesDropped = async (dropped: DataTransfer): Promise<NamedFile[]> => {
  const entries = [...dropped.items].map((item) => item.webkitGetAsEntry?.() ?? null)
  const plain = filesPicked(dropped.files)
  if (entries.every((entry) => entry === null)) return plain
  const found: NamedFile[] = []
  for (const entry of entries) if (entry) found.push(...(await readEntry(entry, "")))
  return found
}
