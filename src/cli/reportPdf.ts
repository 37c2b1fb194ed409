/** The PDF report on the command line: its letters come from their package, its moment from this machine's clock. */
import { readFile } from "node:fs/promises"
import { createRequire } from "node:module"
import type { ExportedJob } from "../exports/ExportedJob"
import { recordPdf } from "../exports/recordPdf"

const readFont = async (name: string) =>
  new Uint8Array(await readFile(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)))

/** The job as a PDF file made now. */
export const reportPdf = async (job: ExportedJob): Promise<Uint8Array> => {
  const [regular, bold] = await Promise.all([readFont("DejaVuSansCondensed"), readFont("DejaVuSansCondensed-Bold")])
  return recordPdf(job, { fonts: { regular, bold }, madeAt: new Date().toISOString() })
}
