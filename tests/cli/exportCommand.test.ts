/** `export`: what it writes, what it refuses, and its exit status. */
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, test, vi } from "vitest"
import { exportCommand } from "../../src/cli/exportCommand"
import { logCommand } from "../../src/cli/logCommand"
import { captureConsole } from "./captureConsole"

vi.setConfig({ testTimeout: 60_000 })
const root = mkdtempSync(join(tmpdir(), "bothhands-export-"))
afterAll(() => rmSync(root, { recursive: true }))
const sample = "samples/bakery.bothhands.jsonl"

test("all formats are written once, and again only when told to", async () => {
  const to = join(root, "all")
  expect(await exportCommand([sample], { to }, captureConsole())).toBe(0)
  expect(readdirSync(to).sort()).toEqual([
    "bakery.csv",
    "bakery.json",
    "bakery.pdf",
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

test("a report is written as a PDF", async () => {
  const to = join(root, "report")
  expect(await exportCommand([sample], { to, pdf: true }, captureConsole())).toBe(0)
  expect(readdirSync(to)).toEqual(["bakery.pdf"])
  expect(readFileSync(join(to, "bakery.pdf")).subarray(0, 5).toString()).toBe("%PDF-")
})

test("a cut file is saved in part with status 1, and what is no job file gives status 2", async () => {
  const cut = join(root, "cut.bothhands.jsonl")
  writeFileSync(cut, readFileSync(sample, "utf8").slice(0, 20_000))
  const to = join(root, "cut")
  expect(await exportCommand([cut], { to, csv: true }, captureConsole())).toBe(1)
  expect(readFileSync(join(to, "cut.csv"), "utf8")).toContain("The file is cut")
  expect(await exportCommand([join(root, "none.jsonl")], { to, csv: true }, captureConsole())).toBe(2)
})

test("a folder stands for all job files in it, and two jobs of one name are both kept", async () => {
  const from = join(root, "jobs")
  mkdirSync(join(from, "older"), { recursive: true })
  copyFileSync(sample, join(from, "bakery.bothhands.jsonl"))
  copyFileSync(sample, join(from, "older", "bakery.bothhands.jsonl"))
  writeFileSync(join(from, "notes.txt"), "not a job")
  const to = join(root, "many")
  const io = captureConsole()
  expect(await exportCommand([from, join(root, "nowhere")], { to, json: true }, io)).toBe(2)
  expect(readdirSync(to).sort()).toEqual(["bakery-2.json", "bakery.json"])
  expect(io.complained.join("\n")).toMatch(/nowhere/)
})

test("a job file is never replaced by an export of another, not even through a link to its folder", async () => {
  const from = join(root, "same")
  mkdirSync(from)
  const job = join(from, "x.json")
  const named = join(from, "x.jsonl")
  copyFileSync(sample, job)
  copyFileSync(sample, named)
  const link = join(root, "link")
  symlinkSync(from, link)
  const io = captureConsole()
  expect(await exportCommand([named, job], { to: link, json: true, replace: true }, io)).toBe(2)
  expect(io.printed.join("\n")).toContain("itself one of the job files")
  expect(readFileSync(job, "utf8")).toBe(readFileSync(sample, "utf8"))
})

test("a job with a stop left open is exported whole, with status 1", async () => {
  const job = join(root, "stop.bothhands.jsonl")
  const said = join(root, "stop.txt")
  writeFileSync(said, "supply neutral twenty five square\np m e\nwater bond four square\n")
  const options = { place: "The village hall", start: "2026-03-02T09:00:00Z", pack: "uk-bs7671", out: job }
  expect(await logCommand(said, options, captureConsole())).toBe(1)
  const to = join(root, "stop")
  expect(await exportCommand([job], { to, csv: true }, captureConsole())).toBe(1)
  expect(readFileSync(join(to, "stop.csv"), "utf8")).toMatch(/water,[^\n]*,4,mm²,[^\n]*stop, open: /)
})
