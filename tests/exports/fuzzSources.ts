/** The whole files that spoiled ones are made from: the sample job and its transcript. */
import { readFileSync } from "node:fs"
import { readJobFile } from "../../src/record/jobFile"
import type { FuzzSources } from "./fuzzFiles"

export const readSources = (): FuzzSources => {
  const job = readFileSync("samples/bakery.bothhands.jsonl", "utf8")
  const file = readJobFile(job)
  if (!file.ok) throw new Error(file.because)
  return { job, lines: file.value.lines, vtt: readFileSync("samples/bakery.vtt", "utf8") }
}
