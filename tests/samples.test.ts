/** The sample job as a transcript and as a job file: one record, both warnings, and nothing from the chatter. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, test } from "vitest"
import { checkCommand } from "../src/cli/checkCommand"
import { logCommand } from "../src/cli/logCommand"
import { readJobFile } from "../src/record/jobFile"
import type { LogLine } from "../src/record/LogLine"
import { bakeryChatter, bakeryRecord, bakeryWarnings } from "./bakery"
import { captureConsole } from "./cli/captureConsole"
import { heardIn, recordOf, saidIn } from "./recordOf"

const linesOf = (file: string): LogLine[] => {
  const read = readJobFile(readFileSync(file, "utf8"))
  if (!read.ok) throw new Error(read.because)
  expect(read.value.faults).toEqual([])
  return read.value.lines
}

const expectBakery = (lines: readonly LogLine[]) => {
  expect(recordOf(lines)).toEqual([...bakeryRecord].sort())
  const warnings = saidIn(lines).filter((words) => words.startsWith("Warning."))
  expect(warnings.map((words, index) => words.slice(0, bakeryWarnings[index]?.length))).toEqual(bakeryWarnings)
  expect(heardIn(lines).filter((words) => bakeryChatter.test(words))).toEqual([])
}

test("the transcript gives the record that its script says, and status 0", { timeout: 30_000 }, async () => {
  const folder = mkdtempSync(join(tmpdir(), "bothhands-sample-"))
  const out = join(folder, "job.jsonl")
  const options = { place: "The bakery", start: "2026-03-02T09:00:00Z", pack: "uk-bs7671", live: true, out }
  expect(await logCommand("samples/bakery.vtt", options, captureConsole())).toBe(0)
  expectBakery(linesOf(out))
  rmSync(folder, { recursive: true })
})

test("so does the job file beside it", { timeout: 30_000 }, async () => {
  expectBakery(linesOf("samples/bakery.bothhands.jsonl"))
  expect(await checkCommand("samples/bakery.bothhands.jsonl", { pack: "uk-bs7671" }, captureConsole())).toBe(0)
})
