/** The files that a job can leave the desk as. Each is made only when it is asked for, and its code is fetched then. */
import { type ExportedJob, exportedJob } from "../../../exports/ExportedJob"
import type { ReviewedJob } from "../../../review/ReviewedJob"

export interface DeskFile {
  name: string
  /** What it is good for. */
  words: string
  ending: string
  type: string
  make: (job: ExportedJob) => Promise<string | Uint8Array<ArrayBuffer>>
}

export const deskFiles: readonly DeskFile[] = [
  {
    name: "Job file",
    words: "the whole log with its chain of hashes: the copy to keep",
    ending: "bothhands.jsonl",
    type: "application/x-ndjson",
    make: async ({ lines }) => (await import("../../../record/jobFile")).writeJobFile(lines),
  },
  {
    name: "Report",
    words: "for paper and for reading (PDF)",
    ending: "pdf",
    type: "application/pdf",
    make: async (job) => (await import("../../makeReport")).makeReport(job),
  },
  {
    name: "Table",
    words: "one row a value, for a spreadsheet (CSV)",
    ending: "csv",
    type: "text/csv",
    make: async (job) => (await import("../../../exports/recordCsv")).recordCsv(job),
  },
  {
    name: "Record",
    words: "values, findings and log for other software (JSON)",
    ending: "json",
    type: "application/json",
    make: async (job) => (await import("../../../exports/recordJson")).recordJson(job),
  },
  {
    name: "What was said",
    words: "with times, as subtitles (WebVTT)",
    ending: "vtt",
    type: "text/vtt",
    make: async ({ lines, faults }) => (await import("../../../exports/saidVtt")).saidVtt(lines, faults),
  },
]

/** The file itself, named after the place and the day. */
export const makeFile = async (file: DeskFile, job: ReviewedJob): Promise<File> => {
  const { lines, record, checked, trust } = job
  const exported = exportedJob({ lines, record, checked, faults: trust.faults })
  const [{ safeName }, content] = await Promise.all([import("../../../exports/safeName"), file.make(exported)])
  const { place, openedAt } = record
  const name = safeName(`${place} ${openedAt?.slice(0, 10) ?? ""}`)
  return new File([content], `${name}.${file.ending}`, { type: file.type })
}
