/** Opens the offline ear for the command line: the same recogniser as in the browser, its pack read from disk. */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { type EarFileName, type EarFiles, EarPack, earFileNames } from "../speech/EarPack"
import { type Engine, loadEngine } from "../speech/engine"
import { createRecogniser, type Recogniser } from "../speech/recogniser"

/** Where `npm run ear` puts the pack. */
export const earPackFolder = fileURLToPath(new URL("../../.ear/ear", import.meta.url))

/** Takes a third of a second; use one for many files. */
export const openEar = async (folder = earPackFolder): Promise<Outcome<Recogniser>> => {
  try {
    return done(createRecogniser(await loadEngineInNode(), readEarFiles(folder)))
  } catch {
    return refuse("The offline ear is not there. Run: npm run ear")
  }
}

/** The pack in memory. Throws where it is missing or is no pack. */
export const readEarFiles = (folder = earPackFolder): EarFiles => {
  const pack = EarPack.parse(JSON.parse(readFileSync(join(folder, "pack.json"), "utf8")))
  const parts = earFileNames.map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))] as const)
  return { pack, bytes: Object.fromEntries(parts) as Record<EarFileName, Uint8Array> }
}

/**
 * Loads the engine without the handler that it hangs on the whole process: that one throws every uncaught error again,
 * which ends the process where others would have reported the error and gone on.
 */
export const loadEngineInNode = async (): Promise<Engine> => {
  const before = process.listeners("uncaughtException")
  const engine = await loadEngine()
  for (const listener of process.listeners("uncaughtException"))
    if (!before.includes(listener)) process.off("uncaughtException", listener)
  return engine
}
