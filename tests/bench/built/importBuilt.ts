/**
 * Loads a source file as the product ships it: built by Vite, with all that it imports. Under tsx every function that is
 * made keeps its name by a call of its own, which no user pays for and which costs ours a quarter of its speed.
 */
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath, pathToFileURL } from "node:url"
import { build } from "vite"

const root = fileURLToPath(new URL("../../..", import.meta.url))

/** The module at a path from the project's root. Throws when it cannot be built. */
export async function importBuilt<Module>(path: string): Promise<Module> {
  const outDir = mkdtempSync(join(tmpdir(), "bothhands-bench-"))
  try {
    await build({
      root,
      configFile: false,
      logLevel: "warn",
      ssr: { noExternal: true },
      build: {
        ssr: path,
        outDir,
        emptyOutDir: false,
        target: "es2022",
        rolldownOptions: { output: { entryFileNames: "built.mjs" } },
      },
    })
    return (await import(pathToFileURL(join(outDir, "built.mjs")).href)) as Module
  } finally {
    rmSync(outDir, { recursive: true })
  }
}
