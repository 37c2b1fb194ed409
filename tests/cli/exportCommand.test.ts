/** `export`: what it writes, what it refuses, and its exit status. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, test } from "vitest"
import { exportCommand } from "../../src/cli/exportCommand"
import { captureConsole } from "./captureConsole"

const root = mkdtempSync(join(tmpdir(), "bothhands-export-"))
afterAll(() => rmSync(root, { recursive: true }))
const sample = "samples/bakery.bothhands.jsonl"

test("all formats are written once, and again only when told to", async () => {
  const to = join(root, "all")
  expect(await exportCommand([sample], { to }, captureConsole())).toBe(0)
  expect(readdirSync(to).sort()).toEqual([
    "bakery.csv",
    "bakery.json",
    "bakery.vtt",
    "job-file-line.schema.json",
    "record.schema.json",
  ])
  writeFileSync(join(to, "bakery.csv"), "mine")
  const io = captureConsole()
  expect(await exportCommand([sample], { to }, io)).toBe(2)
  expect(io.printed.join("\n")).toContain("bakery.csv is already there")
  expect(readFileSync(join(to, "bakery.csv"), "utf8")).toBe("mine")
  expect(await exportCommand([sample], { to, replace: true }, captureConsole())).toBe(0)
  expect(readFileSync(join(to, "bakery.csv"), "utf8")).toContain("place,job")
})

test("a cut file is saved in part with status 1, and what is no job file gives status 2", async () => {
  const cut = join(root, "cut.bothhands.jsonl")
  writeFileSync(cut, readFileSync(sample, "utf8").slice(0, 20_000))
  const to = join(root, "cut")
  expect(await exportCommand([cut], { to, csv: true }, captureConsole())).toBe(1)
  expect(readFileSync(join(to, "cut.csv"), "utf8")).toContain("The file is cut")
  expect(await exportCommand([join(root, "none.jsonl")], { to, csv: true }, captureConsole())).toBe(2)
})
