/** The sample recording through the real offline ear and the whole loop, on the command line. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { expect, test } from "vitest"
import { logCommand } from "../../src/cli/logCommand"
import { readJobFile } from "../../src/record/jobFile"
import { bakeryChatter, bakeryRecord, bakeryWarnings } from "../bakery"
import { captureConsole } from "../cli/captureConsole"
import { heardIn, recordOf, saidIn } from "../recordOf"

test("the recording gives the same record and the same warnings as its transcript", async () => {
  const folder = mkdtempSync(join(tmpdir(), "bothhands-sample-"))
  const out = join(folder, "job.jsonl")
  const io = captureConsole()
  const options = { place: "The bakery", start: "2026-03-02T09:00:00Z", pack: "uk-bs7671", live: true, out }
  expect(await logCommand("samples/bakery.wav", options, io)).toBe(0)
  const read = readJobFile(readFileSync(out, "utf8"))
  if (!read.ok) throw new Error(read.because)
  const { lines } = read.value
  expect(recordOf(lines)).toEqual([...bakeryRecord].sort())
  const warnings = saidIn(lines).filter((words) => words.startsWith("Warning."))
  expect(warnings.map((words, index) => words.slice(0, bakeryWarnings[index]?.length))).toEqual(bakeryWarnings)
  expect(heardIn(lines).filter((words) => bakeryChatter.test(words))).toEqual([])
  rmSync(folder, { recursive: true })
}, 900_000)
