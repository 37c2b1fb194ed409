/** A job as its report: every section in order, and the cautions that always stand at the end. */
import { findPack } from "../../rules/packs"
import type { ExportedJob } from "../ExportedJob"
import { valueTrails } from "../valueTrail"
import { arrangementOf } from "./arrangementOf"
import { changeSections } from "./changeSections"
import { findingSections, fittingSection } from "./findingSections"
import { gapSection } from "./gapSection"
import { headSection } from "./headSection"
import type { Block, Report } from "./Report"
import { readingSection } from "./readingSection"
import { valueSections } from "./valueSections"

const cautions = ({ record, lines }: ExportedJob): Block[] => {
  const edition = findPack(record.pack)?.edition ?? `the pack "${record.pack}", which is not known here`
  const told = lines.find((line) => line.type === "job_opened")?.caution
  return [
    { kind: "heading", level: 2, text: "Cautions" },
    {
      kind: "list",
      items: [
        `This is a record and advice from ${edition} as published. Check the edition in force, local rules and the ` +
          "network operator.",
        "The rules look only at what was said. What was not said was not looked at, and this report does not say that " +
          "the installation is fit for use.",
        "Isolate, and prove dead, before an earth is opened. If you smell gas, stop and get out.",
        "A competent person decides and signs. This report prints no body's form and takes the place of none.",
        ...(told ? [`Told to the worker when the job was opened: ${told}`] : []),
      ],
    },
  ]
}

/** Who signs on paper: the usual two, and every other role that signed in the log. */
const rolesOf = ({ lines }: ExportedJob): string[] => {
  const roles = new Set(lines.flatMap((line) => (line.type === "signed_off" ? [line.role] : [])))
  return [
    "Did the work",
    "Decides and signs, as the competent person",
    ...[...roles].map((role) => `Signed in the log as: ${role}`),
  ]
}

/** `madeAt` is the moment of making, ISO 8601 with its offset. */
export const reportOf = (job: ExportedJob, madeAt: string): Report => {
  const trails = valueTrails(job)
  const place = job.record.place === "" ? "place not in the file" : job.record.place
  const title = "Record of earthing and bonding work"
  return {
    title: `${title}: ${place}`,
    foot: `${place} · advice only; the competent person decides and signs`,
    blocks: [
      ...headSection(job, title, madeAt),
      { kind: "heading", level: 2, text: "The earthing arrangement" },
      { kind: "arrangement", drawn: arrangementOf(job) },
      ...findingSections(job),
      ...gapSection(job),
      ...readingSection(job),
      ...valueSections(job, trails),
      ...changeSections(job, trails),
      ...fittingSection(job),
      ...cautions(job),
      { kind: "heading", level: 2, text: "Signatures" },
      { kind: "signatures", roles: rolesOf(job) },
    ],
  }
}
