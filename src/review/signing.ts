/**
 * Signing a record. A stop that stands open holds it up until it is put right or kept with a reason; everything else is
 * for the person to weigh, and is written down with the signature. A signature says who takes it on, never that an
 * installation is safe.
 */
import type { Step } from "../facts/Fact"
import type { Finding } from "../facts/Finding"
import type { Item } from "../facts/Item"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { sayStep } from "../interpret/sayStep"
import { chainOf } from "../record/chain"
import { allHeld, awaitingYes } from "../record/holding"
import type { JobRecord } from "../record/JobRecord"
import type { Draft } from "../record/LogLine"
import { signedFindings } from "../record/signedFindings"
import { isKept, openWarnings } from "../record/warningKey"
import { readyToSign } from "../rules/readyToSign"
import type { ReviewedJob } from "./ReviewedJob"

/** Who signs: the person who did the work, and somebody who looked it over. */
export const signingRoles = ["worker", "reviewer"] as const
export type SigningRole = (typeof signingRoles)[number]

/** Stops that stand open. While there is one, nobody can sign. */
export const openStops = ({ record, checked }: ReviewedJob): readonly Finding[] =>
  readyToSign(checked, (finding) => isKept(record, finding)).stops

const sayPlace = (item: Item | null | undefined, kind: string) =>
  `${item ? `${sayItem(item)}: ` : ""}${kind.startsWith("step:") ? sayStep(kind.slice(5) as Step) : sayKind(kind)}`

/** Values out of a file that nobody has gone through yet. */
const sayUnseen = (record: JobRecord): string[] => {
  const count = allHeld(record).filter(
    ({ accepted, needsYes, origin, fact }) =>
      accepted === null && !needsYes && origin.by === "voice" && fact.kind !== "service",
  ).length
  return count === 0 ? [] : [`${count} ${count === 1 ? "value" : "values"} that nobody has said yes to`]
}

/** What is left open, in words: warnings, values that wait for a yes, and what rules would still want to know. */
export const openWords = ({ record, checked }: ReviewedJob): string[] => [
  ...openWarnings(record, checked.findings).map((finding) => finding.spoken),
  ...awaitingYes(record).map((held) => `${sayPlace(held.item, held.fact.kind)} waits for a yes`),
  ...sayUnseen(record),
  ...checked.missing.map(({ item, kind }) => `${sayPlace(item, kind)} was not said`),
]

/** The signature as a line of the log, over all lines so far; or why nobody can sign yet. */
export const draftSignature = (job: ReviewedJob, role: SigningRole, name: string): Outcome<Draft> => {
  if (job.lines.length === 0) return refuse("There is nothing to sign.")
  if (openStops(job).length > 0) return refuse("A stop stands open. Put it right, or keep it with a reason.")
  const typed = name.trim().slice(0, 120)
  const over = chainOf(job.lines).at(-1)!
  return done({
    type: "signed_off",
    role,
    undone: openWords(job),
    ...(typed && { name: typed }),
    over,
    findings: signedFindings(job.record, job.checked.findings),
  })
}
