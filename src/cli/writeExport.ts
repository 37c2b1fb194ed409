/**
 * Puts one exported file into its folder. What is there is never overwritten unawares: a new file is made only where there
 * is none, and replacing goes by a new file that takes the old one's place whole.
 */
import { rename, rm, writeFile } from "node:fs/promises"
import { basename, dirname, join, resolve } from "node:path"
import { done, type Outcome, refuse } from "../facts/Outcome"

export interface ExportTarget {
  folder: string
  name: string
  replace: boolean
  /** Real paths that may not be written, such as the job files themselves. */
  kept: ReadonlySet<string>
}

const because: Record<string, string> = {
  EACCES: "it may not be written",
  ENOSPC: "the disk is full",
  EISDIR: "there is a folder of that name",
  EROFS: "the disk may not be written",
}

/** Writes the content, or says in plain words why not. */
export const writeExport = async (
  content: string | Uint8Array,
  { folder, name, replace, kept }: ExportTarget,
): Promise<Outcome> => {
  const path = resolve(join(folder, name))
  if (dirname(path) !== resolve(folder) || basename(path) !== name) return refuse(`${name}: it would leave the folder.`)
  if (kept.has(path)) return refuse(`${name}: it is itself one of the job files.`)
  const fresh = replace ? `${path}.new` : path
  try {
    await writeFile(fresh, content, { flag: "wx" })
    if (replace) await rename(fresh, path)
    return done(undefined)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? ""
    if (code === "EEXIST" && !replace) return refuse(`${name} is already there; --replace writes over it.`)
    if (code === "EEXIST") return refuse(`${basename(fresh)} is in the way.`)
    if (replace) await rm(fresh, { force: true })
    return refuse(`${name}: ${because[code] ?? `it could not be written (${code})`}.`)
  }
}
