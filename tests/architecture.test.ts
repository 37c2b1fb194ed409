/** Holds the import law: which folder may know which, and where browser, Node and libraries are allowed. */
import { readdirSync, readFileSync } from "node:fs"
import { dirname, join, relative, resolve } from "node:path"
import { parseSync } from "oxc-parser"
import { expect, test } from "vitest"

const src = resolve("src")
const mayImport: Record<string, string[]> = {
  facts: [],
  grammar: [],
  speech: ["facts"],
  rules: ["facts"],
  record: ["facts"],
  interpret: ["facts", "grammar"],
  dialogue: ["facts", "interpret", "rules", "record"],
  review: ["facts", "rules", "record", "interpret"],
  exports: ["facts", "rules", "record"],
  search: ["facts", "interpret", "rules", "record"],
  app: ["facts", "grammar", "speech", "interpret", "rules", "record", "dialogue", "review", "exports", "search"],
  cli: ["facts", "grammar", "speech", "interpret", "rules", "record", "dialogue", "review", "exports"],
}
/** Libraries with one home; zod may live anywhere. */
const homeOf: Record<string, string[]> = {
  react: ["app"],
  "react-dom": ["app"],
  "fuse.js": ["interpret"],
  "chrono-node": ["interpret", "search"],
  "@tanstack/react-virtual": ["app"],
  soundswallower: ["speech"],
  mediabunny: ["speech"],
  dexie: ["record"],
  pdfkit: ["exports"],
  fontkit: ["exports"],
}
const pure = ["facts", "grammar", "interpret", "rules", "dialogue", "review", "exports", "search"]
const rimGlobals =
  /(?<![.\w$"'])(window|document|navigator|localStorage|indexedDB|fetch|process|Buffer|AudioContext)(?=[.([])/

interface SourceFile {
  path: string
  folder: string
  text: string
  imports: string[]
}

const readFile = (path: string): SourceFile => {
  const text = readFileSync(path, "utf8")
  const { module } = parseSync(path, text)
  const imports = [
    ...module.staticImports.map((one) => one.moduleRequest.value),
    ...module.staticExports.flatMap((one) => one.entries.flatMap((entry) => entry.moduleRequest?.value ?? [])),
    ...module.dynamicImports.map((one) => text.slice(one.moduleRequest.start + 1, one.moduleRequest.end - 1)),
  ]
  return { path, folder: relative(src, path).split("/")[0]!, text, imports }
}

const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => readFile(join(src, name)))

const resolveImport = (from: SourceFile, to: string) => resolve(dirname(from.path), to.replace(/\?.*$/, ""))
const folderOf = (path: string) => relative(src, path).split("/")[0]!
const libraryOf = (name: string) =>
  name
    .split("/")
    .slice(0, name.startsWith("@") ? 2 : 1)
    .join("/")

test.each(Object.keys(mayImport))("%s imports only what the layout allows", (folder) => {
  const strangers = files
    .filter((file) => file.folder === folder)
    .flatMap((file) => file.imports.filter((to) => to.startsWith(".")).map((to) => folderOf(resolveImport(file, to))))
    .filter((to) => to !== folder && !to.startsWith("..") && !mayImport[folder]!.includes(to))
  expect(strangers).toEqual([])
})

test("every folder of src is in the law", () => {
  expect([...new Set(files.map((file) => file.folder))].filter((folder) => !(folder in mayImport))).toEqual([])
})

test("a library stays in its home", () => {
  const strays = files.flatMap((file) =>
    file.imports
      .filter((to) => !to.startsWith(".") && homeOf[libraryOf(to)] && !homeOf[libraryOf(to)]!.includes(file.folder))
      .map((to) => `${relative(src, file.path)} imports ${to}`),
  )
  expect(strays).toEqual([])
})

test("pure folders use no browser, Node or clock", () => {
  const strays = files
    .filter((file) => pure.includes(file.folder))
    .flatMap((file) => {
      const code = file.text
        .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
        .replace(/"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g, '""')
      const found = rimGlobals.exec(code)?.[1] ?? /Date\.now|new Date\(\)|Math\.random/.exec(code)?.[0]
      const node = file.imports.find((to) => to.startsWith("node:"))
      return found || node ? [`${relative(src, file.path)} uses ${found ?? node}`] : []
    })
  expect(strays).toEqual([])
})

test("tables hold figures, never functions", () => {
  const withFunctions = files
    .filter((file) => file.path.includes("/rules/tables/"))
    .filter((file) => /=>|\bfunction\b/.test(file.text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")))
  expect(withFunctions.map((file) => relative(src, file.path))).toEqual([])
})

test("no import cycles", () => {
  const known = new Map(files.map((file) => [file.path.replace(/\.tsx?$/, ""), file]))
  const state = new Map<string, "open" | "closed">()
  const cycles: string[] = []
  const visit = (key: string, trail: string[]) => {
    const file = known.get(key)
    if (!file || state.get(key) === "closed") return
    if (state.get(key) === "open") {
      cycles.push([...trail.slice(trail.indexOf(key)), key].map((path) => relative(src, path)).join(" > "))
      return
    }
    state.set(key, "open")
    for (const to of file.imports.filter((name) => name.startsWith(".")))
      visit(resolveImport(file, to), [...trail, key])
    state.set(key, "closed")
  }
  for (const key of known.keys()) visit(key, [])
  expect(cycles).toEqual([])
})

test("no barrels, no default exports, no drawers for anything", () => {
  const bad = files.filter(
    (file) =>
      /\/index\.tsx?$/.test(file.path) ||
      /export default/.test(file.text) ||
      /\/(utils?|helpers?|common|misc)\b/i.test(file.path.slice(src.length)),
  )
  expect(bad.map((file) => relative(src, file.path))).toEqual([])
})

test("every source file opens by saying what it is for", () => {
  expect(files.filter((file) => !file.text.startsWith("/**")).map((file) => relative(src, file.path))).toEqual([])
})
