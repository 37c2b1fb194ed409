/**
 * The CSV export in LibreOffice: the sample, and a job in which every text tries to be a formula, are opened there as they
 * are, kept as a spreadsheet and written as CSV again. Prints the cells that came back otherwise and the formulae that a
 * spreadsheet made of a text; both should be none but for a tab, which a cell there does not keep. Without LibreOffice it says so and measures nothing.
 */
import { execFileSync } from "node:child_process"
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { strFromU8, unzipSync } from "fflate"
import Papa from "papaparse"
import { exportedJob } from "../../src/exports/ExportedJob"
import { recordCsv } from "../../src/exports/recordCsv"
import type { LogLine } from "../../src/record/LogLine"
import type { ReviewedJob } from "../../src/review/ReviewedJob"
import { bakery, logOf, review } from "../review/officeJob"

const hasOffice = (): boolean => {
  try {
    execFileSync("soffice", ["--version"], { stdio: "ignore" })
    return true
  } catch {
    return false
  }
}

const nasty = [
  "=1+1",
  "+1",
  "-1+2",
  "@SUM(A1)",
  '=HYPERLINK("http://localhost","x")',
  "\t=1+1",
  "a;=1+1",
  '"=1+1',
  "＝1+1",
]

/** Every text that a person can put in tries to run. */
const nastyJob = (): ReviewedJob => {
  const lines = logOf(["pme", "water ten square"])
  const last = lines.at(-1)!
  const notes = nasty.map((value, at): LogLine => {
    const stamp = { v: 1, id: `note-${at}`, job: last.job, at: last.at, by: "office", device: "desk" } as const
    const origin = { by: "hand", reason: value } as const
    return { ...stamp, seq: last.seq + 1 + at, type: "entry", fact: { kind: "note", value }, origin, needsYes: false }
  })
  const named = lines.map((line) => (line.type === "job_opened" ? { ...line, place: nasty[4]! } : line))
  return review([...named, ...notes])
}

const csvOf = ({ lines, record, checked, trust }: ReviewedJob) =>
  recordCsv(exportedJob({ lines, record, checked, faults: trust.faults }))

const cellsOf = (text: string): string[][] =>
  Papa.parse<string[]>(text.replace(/^\uFEFF/, ""), { skipEmptyLines: true }).data

/**
 * Converts inside the folder, by a LibreOffice with a profile of its own. With nobody to look at its preview it does not go
 * by the byte order mark, so what that says is told it: comma, quotation marks, UTF-8.
 */
const convert = (folder: string, file: string, to: string): void =>
  void execFileSync(
    "soffice",
    [
      `-env:UserInstallation=file://${folder}/profile`,
      "--headless",
      ...(file.endsWith(".csv") ? ["--infilter=CSV:44,34,76"] : []),
      "--convert-to",
      to,
      "--outdir",
      folder,
      file,
    ],
    { cwd: folder, stdio: "ignore", timeout: 180_000 },
  )

const compare = (name: string, text: string, folder: string): void => {
  writeFileSync(join(folder, `${name}.csv`), text)
  convert(folder, `${name}.csv`, "ods")
  const sheet = strFromU8(unzipSync(readFileSync(join(folder, `${name}.ods`)))["content.xml"]!)
  // Cells as they are kept and not as they are shown.
  convert(folder, `${name}.ods`, "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false")
  const [ours, theirs] = [cellsOf(text), cellsOf(readFileSync(join(folder, `${name}.csv`), "utf8"))]
  const cells = ours.flatMap((row, at) => row.map((cell, column) => [cell, theirs[at]?.[column] ?? "(none)"] as const))
  const other = cells.filter(([one, two]) => one !== two)
  const formulae = sheet.match(/table:formula="[^"]*"/g) ?? []
  const numbers = sheet.match(/office:value-type="float"/g)?.length ?? 0
  console.log(`${name}: ${ours.length} rows and ${theirs.length}, ${cells.length} cells, ${numbers} of them numbers`)
  console.log(`  ${other.length} came back otherwise, ${formulae.length} became a formula`)
  for (const [one, two] of other.slice(0, 8)) console.log(`  ${JSON.stringify(one)} → ${JSON.stringify(two)}`)
  for (const formula of formulae.slice(0, 8)) console.log(`  ${formula}`)
}

export const run = async (): Promise<void> => {
  if (!hasOffice()) return console.log("LibreOffice (soffice) is not on this machine, so nothing was compared.")
  const folder = mkdtempSync(join(tmpdir(), "bothhands-sheet-"))
  try {
    compare("sample", csvOf(bakery()), folder)
    compare("formulae", csvOf(nastyJob()), folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
