/** What the rules say: open warnings first, those kept with a reason, notes; and apart, what fitted. */
import type { Finding } from "../../facts/Finding"
import { isWarning, keptReason, warningKey } from "../../record/warningKey"
import type { ExportedJob } from "../ExportedJob"
import { momentWords } from "./momentWords"
import { itemName } from "./quantity"
import type { Block, Cell, Shape } from "./Report"

const known: Record<Finding["status"], string> = {
  direct: "published figure",
  derived: "worked out from published figures",
  memory: "from memory, so look in the book",
}

const sourceWords = ({ source, status }: Finding): string => {
  const named = [source.standard, source.edition, source.clause].filter((one) => one !== "none" && one !== "")
  return `${named.join(", ")}; ${known[status]}`
}

const marks: Record<Finding["severity"], { mark: Shape; words: string }> = {
  stop: { mark: "stop", words: "stop" },
  warn: { mark: "warn", words: "warning" },
  note: { mark: "note", words: "note" },
  ok: { mark: "fits", words: "fits" },
}

const partOf = (finding: Finding): Cell => {
  const { mark, words } = marks[finding.severity]
  return { text: itemName(finding.item ?? "job"), under: words, mark }
}

const table = (findings: readonly Finding[]): Block => ({
  kind: "table",
  heads: ["Part", "What the rules say", "By"],
  shares: [0.2, 0.52, 0.28],
  rows: findings.map((finding) => [partOf(finding), { text: finding.shown }, { text: sourceWords(finding) }]),
})

const heading = (text: string): Block => ({ kind: "heading", level: 2, text })

const keptWords = (finding: Finding, { record, lines }: ExportedJob): Cell => {
  const key = warningKey(finding)
  const line = lines.find((one) => one.type === "kept" && one.warning === key)
  return {
    text: keptReason(record, finding) ?? "the reason is not in the file",
    under: line ? `${line.by}, ${momentWords(line.at)}` : "",
    mark: "kept",
  }
}

const keptSection = (findings: readonly Finding[], job: ExportedJob): Block[] =>
  findings.length === 0
    ? []
    : [
        heading("Kept as it is, with a reason"),
        {
          kind: "table",
          heads: ["Part", "What the rules say", "Kept because", "By"],
          shares: [0.17, 0.39, 0.24, 0.2],
          rows: findings.map((finding) => [
            partOf(finding),
            { text: finding.shown },
            keptWords(finding, job),
            { text: sourceWords(finding) },
          ]),
        },
      ]

const section = (title: string, findings: readonly Finding[]): Block[] =>
  findings.length === 0 ? [] : [heading(title), table(findings)]

/** Sections of what is open, kept and worth knowing. The first always stands there. */
export const findingSections = (job: ExportedJob): Block[] => {
  const of = (severity: Finding["severity"]) => job.findings.filter((finding) => finding.severity === severity)
  const kept = job.findings.filter((finding) => isWarning(finding) && !job.open.includes(finding))
  const open: Block[] =
    job.open.length > 0
      ? [table(job.open)]
      : [{ kind: "text", text: "No warning stands open. That says nothing of what was not looked at." }]
  return [heading("Open warnings"), ...open, ...keptSection(kept, job), ...section("Worth knowing", of("note"))]
}

/** What the rules looked at and found fitting; nothing where there is none. */
export const fittingSection = ({ findings }: ExportedJob): Block[] =>
  section(
    "Looked at and fitting",
    findings.filter((finding) => finding.severity === "ok"),
  )
