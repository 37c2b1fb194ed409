/**
 * What the built page makes a browser fetch before its start page can be used, compressed as a server would, and then
 * what it fetches by itself once that is drawn. Neither the ear pack nor the voice is in it.
 */
import { existsSync, readFileSync } from "node:fs"
import { dirname, join, posix } from "node:path"
import { gzipSync } from "node:zlib"

const folder = "dist"

const gzipBytes = (path: string) => gzipSync(readFileSync(join(folder, path)), { level: 9 }).length

const print = (what: string, bytes: number) => console.log(`${String(bytes).padStart(9)} B gzip  ${what}`)

/** Scripts and styles that a page names in itself. */
const namedIn = (html: string): string[] =>
  [...html.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map(([, path]) => path!)

/** What a built script imports, at its start or later, as paths below the folder; workers are not imports. */
const importedBy = (path: string): string[] =>
  [...readFileSync(join(folder, path), "utf8").matchAll(/(?:import\(|from|import)\s*["'`](\.\/[^"'`]+\.js)["'`]/g)]
    .map(([, to]) => posix.join(dirname(path), to!))
    .filter((to) => existsSync(join(folder, to)))

/** The built files that the start page needs, and those that a job, the office and the settings need on top. */
export const startFiles = () => {
  const first = ["index.html", ...namedIn(readFileSync(join(folder, "index.html"), "utf8"))]
  const imported = new Set(first.filter((path) => path.endsWith(".js")).flatMap(importedBy))
  return { first, rest: [...imported].filter((path) => !first.includes(path)) }
}

/** Needs a build in `dist`. */
export const run = async (): Promise<void> => {
  const { first, rest } = startFiles()
  const sum = (paths: Iterable<string>) => [...paths].reduce((total, path) => total + gzipBytes(path), 0)
  for (const path of first) print(path, gzipBytes(path))
  print(`start page ready to use: ${first.length} files`, sum(first))
  for (const path of rest) print(`${path}, fetched once it is drawn, or when it is wanted`, gzipBytes(path))
  print(`all of it: ${first.length + rest.length} files`, sum([...first, ...rest]))
}
