/** The top of the report: what it is about, how it stands, by which edition it was looked at, and if the file was whole. */
import { allHeld } from "../../record/holding"
import type { JobRecord } from "../../record/JobRecord"
import type { LogLine } from "../../record/LogLine"
import { isWarning } from "../../record/warningKey"
import { findPack } from "../../rules/packs"
import type { ExportedJob } from "../ExportedJob"
import { momentWords } from "./momentWords"
import { count } from "./quantity"
import type { Block, Cell } from "./Report"

const notSaid = "not in the file"

const rolesOf = ({ lines }: ExportedJob): string => {
  const roles = new Set(lines.map((line) => line.by).filter((by) => by !== "app"))
  return [...roles].join(", ") || "nobody but the app wrote a line"
}

/** One or more texts about the rules that were followed; the first names the pack and its edition. */
const rulesOf = (id: string): { text: string; under: string } => {
  const pack = findPack(id)
  if (!pack) return { text: `"${id}", which is not known here`, under: "So nothing was checked." }
  const thin = pack.thin ? " Few of its rules are here, seen at second hand: for orientation only." : ""
  return { text: `${pack.title}: ${pack.edition}`, under: `${pack.newer}${thin}` }
}

const detailsOf = (job: ExportedJob, madeAt: string): Cell[][] => {
  const { record, lines } = job
  const row = (name: string, text: string, under?: string): Cell[] => [
    { text: name },
    under === undefined ? { text } : { text, under },
  ]
  const rules = rulesOf(record.pack)
  const devices = new Set(lines.map((line) => line.device)).size
  return [
    row("Place", record.place === "" ? notSaid : record.place),
    row("Job opened", record.openedAt ? momentWords(record.openedAt) : notSaid),
    row("Last line written", record.lastAt ? momentWords(record.lastAt) : notSaid),
    row("Written down by", rolesOf(job), `${count(lines.length, "line")} on ${count(devices, "device")}`),
    signedRow(record),
    ...eventRows(lines),
    row("Rules followed", rules.text, rules.under),
    row("Job's own number", record.job ?? notSaid),
    row("Report made", momentWords(madeAt)),
  ]
}

const signedRow = ({ signedOff: signed, signatures }: JobRecord): Cell[] => {
  if (!signed) return [{ text: "Signed off" }, { text: "no" }]
  const left = signed.undone.length > 0 ? `Left open then: ${signed.undone.join("; ")}` : "Nothing was named as open."
  const who = signatures.map(({ role, name, at }) => `${name ? `${name}, ` : ""}${role}, ${momentWords(at)}`)
  return [{ text: "Signed off" }, { text: who.join("; "), under: left }]
}

/** What else bears on how far the log can be trusted: second copies, a clock that went back, check-ins without an answer. */
const eventRows = (lines: readonly LogLine[]): Cell[][] => {
  const copy = lines.find((line) => line.type === "job_opened")?.copyOf
  const clock = lines.filter((line) => line.type === "clock_back").length
  const struck = lines.filter((line) => line.type === "struck").length
  const silent = lines.filter((line) => line.type === "check_in" && (line.state === "missed" || line.state === "alarm"))
  return [
    ...(copy ? [[{ text: "Second copy of" }, { text: copy }]] : []),
    ...(clock > 0
      ? [
          [
            { text: "Clock" },
            { text: `The device's clock went back ${count(clock, "time")}; the lines are in their order.` },
          ],
        ]
      : []),
    ...(struck > 0
      ? [
          [
            { text: "Words struck" },
            { text: `Private words were taken out of what was said ${count(struck, "time")}.` },
          ],
        ]
      : []),
    ...(silent.length > 0
      ? [[{ text: "Check-ins" }, { text: `${count(silent.length, "check-in")} without an answer.` }]]
      : []),
  ]
}

const standing = (job: ExportedJob): Block[] => {
  const { record, findings, open } = job
  const stops = open.filter((finding) => finding.severity === "stop").length
  const warns = open.length - stops
  const warnings = findings.filter(isWarning).length
  const held = allHeld(record)
  const by = (how: string | null) => held.filter((one) => one.accepted === how)
  const waiting = by(null).filter((one) => one.needsYes).length
  const unseen = by(null).length - waiting
  const answered = `${by("said_yes").length} said yes, ${by("tapped").length} by tap, ${by("not_challenged").length} not challenged`
  const lines: Block[] = [
    stops > 0
      ? { kind: "text", mark: "stop", tone: "loud", text: `${count(stops, "stop")} open: put right before going on.` }
      : { kind: "text", mark: "bare", text: "No stop is open." },
    warns > 0
      ? { kind: "text", mark: "warn", tone: "loud", text: `${count(warns, "warning")} open.` }
      : { kind: "text", mark: "bare", text: "No warning is open." },
  ]
  if (warnings > open.length)
    lines.push({ kind: "text", mark: "kept", text: `${count(warnings - open.length, "warning")} kept with a reason.` })
  lines.push({
    kind: "text",
    mark: waiting > 0 ? "waiting" : "bare",
    text: `${count(held.length, "value")} on record: ${answered}, ${waiting} waiting for a yes${unseen > 0 ? `, ${unseen} that nobody has said yes to` : ""}.`,
  })
  return lines
}

const fileState = ({ faults }: ExportedJob): Block[] =>
  faults.length === 0
    ? [{ kind: "text", mark: "yes", text: "The log was read whole, and no line of it was found changed." }]
    : [
        {
          kind: "text",
          mark: "stop",
          tone: "loud",
          text: "The job file is damaged or was changed. This is a part of a job:",
        },
        { kind: "list", items: faults },
      ]

/** Title, how the job stands, details. */
export const headSection = (job: ExportedJob, title: string, madeAt: string): Block[] => [
  { kind: "heading", level: 1, text: title },
  ...fileState(job),
  ...standing(job),
  { kind: "table", heads: ["About", "This job"], shares: [0.22, 0.78], rows: detailsOf(job, madeAt) },
]
