/** What a change would do before it is done: which values would come and go, and which findings would turn. */
import { type Finding, Severity } from "../facts/Finding"
import { allHeld } from "../record/holding"
import type { Held, JobRecord } from "../record/JobRecord"
import { toSituation } from "../record/toSituation"
import type { Check, ReviewedJob } from "./ReviewedJob"

/** One place on the record whose value would be another. Null: nothing stood, or nothing would stand there. */
export interface ValueTurn {
  slot: string
  before: Held | null
  after: Held | null
}

/** What one rule says of one item, before and after. Null: it says nothing. */
export interface FindingTurn {
  before: Finding | null
  after: Finding | null
}

export interface Preview {
  values: ValueTurn[]
  /** Worst first; what stays word for word the same is left out. */
  findings: FindingTurn[]
}

const valueTurns = (before: JobRecord, after: JobRecord): ValueTurn[] => {
  const old = new Map(allHeld(before).map((held) => [held.slot, held]))
  const fresh = new Map(allHeld(after).map((held) => [held.slot, held]))
  return [...new Set([...old.keys(), ...fresh.keys()])]
    .map((slot) => ({ slot, before: old.get(slot) ?? null, after: fresh.get(slot) ?? null }))
    .filter((turn) => turn.before?.entry !== turn.after?.entry)
}

const placeOf = (finding: Finding) => `${finding.rule}|${finding.item ?? ""}`
const isSame = (a: Finding, b: Finding) => placeOf(a) === placeOf(b) && a.severity === b.severity && a.shown === b.shown

const findingTurns = (before: readonly Finding[], after: readonly Finding[]): FindingTurn[] => {
  const gone = before.filter((one) => !after.some((other) => isSame(one, other)))
  const come = after.filter((one) => !before.some((other) => isSame(one, other)))
  const paired = gone.map((one): FindingTurn => {
    const at = come.findIndex((other) => placeOf(other) === placeOf(one))
    return { before: one, after: at < 0 ? null : come.splice(at, 1)[0]! }
  })
  return [...paired, ...come.map((one): FindingTurn => ({ before: null, after: one }))]
}

/** Worst first, as the schema names them. */
const severities = Severity.options
const weightOf = ({ before, after }: FindingTurn) =>
  Math.min(...[after, before].map((one) => (one ? severities.indexOf(one.severity) : severities.length)))

export const previewChange = ({ record, checked }: ReviewedJob, after: JobRecord, check: Check): Preview => ({
  values: valueTurns(record, after),
  findings: findingTurns(checked.findings, check(toSituation(after)).findings).sort(
    (a, b) => weightOf(a) - weightOf(b),
  ),
})
