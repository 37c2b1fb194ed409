/**
 * Fetches the ear pack for the page. A page that answers every address with its start page would hand over HTML for a
 * missing file, so each file's size is checked against the pack's own note.
 */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type EarFileName, type EarFiles, EarPack, earFileNames } from "./EarPack"

/** `base` is the absolute address of the pack's folder, with a slash at its end. */
export const loadEarFiles = async (base: string): Promise<Outcome<EarFiles>> => {
  try {
    const note = await fetch(new URL("pack.json", base))
    if (!note.ok) return refuse("The offline ear is not on this server.")
    const pack = EarPack.parse(await note.json())
    const parts = await Promise.all(earFileNames.map((name) => loadFile(base, name, pack)))
    return done({ pack, bytes: Object.fromEntries(parts) as Record<EarFileName, Uint8Array> })
  } catch {
    return refuse("The offline ear could not be loaded. It needs the network once, and then never again.")
  }
}

const loadFile = async (base: string, name: EarFileName, pack: EarPack) => {
  const response = await fetch(new URL(name, base))
  const bytes = new Uint8Array(await response.arrayBuffer())
  if (!response.ok || bytes.length !== pack.files[name]?.bytes) throw new Error(`${name} is not the pack's file`)
  return [name, bytes] as const
}
