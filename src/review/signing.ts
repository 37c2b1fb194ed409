/**
 * Signing a record. A stop that stands open holds it up until it is put right or kept with a reason; everything else is
 * for the person to weigh, and is written down with the signature. A signature says who takes it on, never that an
 * installation is safe.
 */
import type { Finding } from "../facts/Finding"
import { done, type Outcome, refuse } from "../facts/Outcome"
import { chainOf } from "../record/chain"
import { awaitingYes } from "../record/holding"
import type { Draft } from "../record/LogLine"
import { signedFindings } from "../record/signedFindings"
import { isKept } from "../record/warningKey"
import { readyToSign } from "../rules/readyToSign"
import type { ReviewedJob } from "./ReviewedJob"

/** Who signs: the person who did the work, and somebody who looked it over. */
export const signingRoles = ["worker", "reviewer"] as const
export type SigningRole = (typeof signingRoles)[number]

export interface SigningState {
  /** Stops that stand open. While there is one, nobody can sign. */
  stops: readonly Finding[]
  /** How much more stands open, for the person to weigh. */
  warns: number
  waiting: number
  missing: number
}

export const signingState = ({ record, checked }: ReviewedJob): SigningState => {
  const { stops, warns, missing } = readyToSign(checked, (finding) => isKept(record, finding))
  return { stops, warns: warns.length, waiting: awaitingYes(record).length, missing: missing.length }
}

/** The signature as a line of the log, over all lines so far; or why nobody can sign yet. */
export const draftSignature = (job: ReviewedJob, role: SigningRole, name: string): Outcome<Draft> => {
  if (job.lines.length === 0) return refuse("There is nothing to sign.")
  if (signingState(job).stops.length > 0) return refuse("A stop stands open. Put it right, or keep it with a reason.")
  const typed = name.trim().slice(0, 120)
  const over = chainOf(job.lines).at(-1)!
  return done({
    type: "signed_off",
    role,
    undone: [],
    ...(typed && { name: typed }),
    over,
    findings: signedFindings(job.record, job.checked.findings),
  })
}
