/** Job files going out of the store and coming into it: one job as a file of lines, all of them as one zip file. */
import { done, type Outcome, refuse } from "../facts/Outcome"
import { writeJobFile } from "../record/jobFile"
import type { JobSummary, Store } from "../record/Store"
import { type FileOrder, takeInJob } from "../record/takeInJob"
import { saveText } from "./saveText"

/** The place in letters that every file system takes, the day, and the job's name, so that no two files meet. */
export const jobFileName = ({ job, place, openedAt }: Pick<JobSummary, "job" | "place" | "openedAt">): string => {
  const letters = place.normalize("NFKD").replace(/[^A-Za-z0-9]+/g, "-")
  const named = letters.replace(/^-+|-+$/g, "").slice(0, 40)
  return `${openedAt.slice(0, 10)}-${named || "job"}-${job}.bothhands.jsonl`
}

/** The text of one job's file. */
export const jobText = async (store: Store, job: string): Promise<string> => writeJobFile((await store.read(job)).lines)

/** Saves one job to the device's downloads. */
export const saveJob = async (store: Store, summary: Pick<JobSummary, "job" | "place" | "openedAt">): Promise<void> =>
  saveText(jobFileName(summary), await jobText(store, summary.job))

/** The same as a file to share. */
export const jobFile = async (store: Store, summary: Pick<JobSummary, "job" | "place" | "openedAt">): Promise<File> =>
  new File([await jobText(store, summary.job)], jobFileName(summary), { type: "application/x-ndjson" })

/** Saves every job as one zip file of job files. Refuses where there is none. */
export const saveAll = async (store: Store, today: string): Promise<Outcome<number>> => {
  const jobs = await store.jobs()
  if (jobs.length === 0) return refuse("There is no job on this device to save.")
  const { strToU8, zipSync } = await import("fflate")
  const files: Record<string, Uint8Array> = {}
  for (const one of jobs) files[jobFileName(one)] = strToU8(await jobText(store, one.job))
  saveText(`bothhands-jobs-${today}.zip`, zipSync(files), "application/zip")
  return done(jobs.length)
}

const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b

/** Files over this size are no day's jobs and are refused before they are opened. */
const mostBytes = 256 * 1024 * 1024

const textsIn = async (file: File): Promise<Outcome<{ name: string; text: string }[]>> => {
  if (file.size > mostBytes) return refuse("The file is too large to hold jobs.")
  const bytes = new Uint8Array(await file.arrayBuffer())
  const read = (content: Uint8Array) => new TextDecoder().decode(content)
  if (!isZip(bytes)) return done([{ name: file.name, text: read(bytes) }])
  try {
    const { unzipSync } = await import("fflate")
    const files = unzipSync(bytes, { filter: ({ originalSize }) => originalSize <= mostBytes })
    return done(Object.entries(files).map(([name, content]) => ({ name, text: read(content) })))
  } catch {
    return refuse("The zip file could not be opened.")
  }
}

/** What became of a file that was taken in, in words for the worker. */
export interface TakenIn {
  ok: boolean
  words: string
}

const takeInText = async (store: Store, order: FileOrder): Promise<TakenIn> => {
  const { name } = order
  const taken = await takeInJob(store, order)
  if (!taken.ok) return { ok: false, words: `${name}: ${taken.because}` }
  const { fresh, known, copyOf, faults } = taken.value
  const copy = copyOf
    ? ["Another device carried on with this job, so it stands beside the other as a second copy."]
    : []
  const words = [`${name}: ${fresh + known} lines taken in.`, ...copy, ...faults].join(" ")
  return { ok: faults.length === 0, words }
}

/** Takes in a job file, or each one in a zip file. `at` is local time now, ISO 8601 with its offset. */
export const takeInFile = async (store: Store, file: File, at: string): Promise<TakenIn[]> => {
  const texts = await textsIn(file)
  if (!texts.ok) return [{ ok: false, words: `${file.name}: ${texts.because}` }]
  const taken: TakenIn[] = []
  for (const { name, text } of texts.value) taken.push(await takeInText(store, { name, text, at }))
  return taken
}
