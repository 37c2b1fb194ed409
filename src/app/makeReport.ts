/**
 * Makes a job's PDF report on the device, as a file to save or to share. The writer and its letters are heavy,
 * so this file is imported, and they are fetched, only when somebody asks for a report.
 */

import letters from "dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url"
import boldLetters from "dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url"
import type { ExportedJob } from "../exports/ExportedJob"
import { recordPdf } from "../exports/recordPdf"
import { safeName } from "../exports/safeName"
import { localNow } from "./localNow"

const fetchBytes = async (url: string): Promise<Uint8Array> => {
  const answer = await fetch(url)
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`)
  return new Uint8Array(await answer.arrayBuffer())
}

/** The report's bytes. Rejects when the letters can be had neither from the network nor from what the device keeps. */
export const makeReport = async (job: ExportedJob): Promise<Uint8Array<ArrayBuffer>> => {
  const [regular, bold] = await Promise.all([letters, boldLetters].map(fetchBytes))
  const bytes = await recordPdf(job, { fonts: { regular: regular!, bold: bold! }, madeAt: localNow() })
  return bytes as Uint8Array<ArrayBuffer>
}

/** Rejects where the report cannot be made. */
export const reportFile = async (job: ExportedJob): Promise<File> =>
  new File([await makeReport(job)], `${safeName(job.record.place)}.pdf`, { type: "application/pdf" })
