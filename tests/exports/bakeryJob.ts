/** The sample job as exports take it, and the same job with a hostile text in every place that holds free words. */
import { readFileSync } from "node:fs"
import { readExportedJob } from "../../src/cli/exportCommand"
import type { ExportedJob } from "../../src/exports/ExportedJob"
import { writeJobFile } from "../../src/record/jobFile"
import type { LogLine } from "../../src/record/LogLine"

export const bakeryText = readFileSync("samples/bakery.bothhands.jsonl", "utf8")

export const jobOf = (text: string): ExportedJob => {
  const job = readExportedJob(text)
  if (!job.ok) throw new Error(job.because)
  return job.value
}

export const hostileJob = (text: string): ExportedJob => {
  const lines = jobOf(bakeryText).lines.map((line): LogLine => {
    if (line.type === "job_opened") return { ...line, place: text }
    if (line.type === "said") return { ...line, words: text }
    return line.type === "heard" ? { ...line, heard: { ...line.heard, text } } : line
  })
  return jobOf(writeJobFile(lines))
}
