/**
 * The record as a PDF report for paper and for screen readers: tagged, in a language, with selectable text. The same job,
 * fonts and moment give the same bytes. It is heavy, so a page loads this file only when somebody asks for a report.
 */
import type { ExportedJob } from "./ExportedJob"
import { reportOf } from "./report/reportOf"
import { openSheet, type ReportFonts } from "./report/sheet/Sheet"
import { writeBlocks } from "./report/sheet/writeBlocks"

export interface PdfOrder {
  /** Bytes of two TrueType fonts; DejaVu Sans Condensed is what the report was laid out with. */
  fonts: ReportFonts
  /** The moment of making, ISO 8601 with its offset. */
  madeAt: string
}

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
  let at = 0
  for (const chunk of chunks) {
    whole.set(chunk, at)
    at += chunk.length
  }
  return whole
}

/** The job as the bytes of a PDF file. Rejects only when the fonts cannot be read. */
export const recordPdf = async (job: ExportedJob, { fonts, madeAt }: PdfOrder): Promise<Uint8Array> => {
  const report = reportOf(job, madeAt)
  const sheet = openSheet({ fonts, title: report.title, madeAt: new Date(madeAt) })
  const chunks: Uint8Array[] = []
  return new Promise((resolve, reject) => {
    sheet.doc.on("data", (chunk: Uint8Array) => chunks.push(chunk))
    sheet.doc.on("end", () => resolve(joined(chunks)))
    sheet.doc.on("error", reject)
    writeBlocks(sheet, report)
    sheet.doc.end()
  })
}
