/** Reads `grammars/` from disk into the plain record that the interpreter takes. */
import { readdirSync, readFileSync } from "node:fs"
import { join, sep } from "node:path"
import { fileURLToPath } from "node:url"

/** All grammar files by their path inside the folder; by default the folder that ships with the product. */
export function readGrammars(
  folder = fileURLToPath(new URL("../../grammars", import.meta.url)),
): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.(jsgf|tsv|txt)$/.test(name),
  )
  return Object.fromEntries(
    names.map((name) => [name.split(sep).join("/"), readFileSync(join(folder, name), "utf8")] as const),
  )
}
