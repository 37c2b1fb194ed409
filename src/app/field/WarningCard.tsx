/** One open warning: the value, the limit and what to do; the clause it rests on; and the two ways out of it. */
import { useState } from "react"
import type { Finding } from "../../facts/Finding"
import type { Held, JobRecord } from "../../record/JobRecord"
import { warningKey } from "../../record/warningKey"
import { State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"
import { showSource } from "../parts/showSource"
import { Working } from "../parts/Working"
import { KeepForm } from "./KeepForm"

interface CardProps {
  finding: Finding
  record: JobRecord
  /** Which list the card stands in: one warning may stand in two. */
  among: string
  /** The worst one stands open; the others show their sentence and open by tap. */
  first: boolean
  keep: (reason: string) => void
  open: (entry: string) => void
}

/** A value is changed; a step is looked at, since it can only be taken back. */
const PutRight = ({ held, open }: { held: Held; open: (entry: string) => void }) => {
  const { label, value } = showFact(held.fact)
  return (
    <button type="button" className="put-right" onClick={() => open(held.entry)}>
      {held.fact.kind === "step_done" ? (
        <span>See “{label.toLowerCase()}”</span>
      ) : (
        <span>
          Change {label.toLowerCase()} <strong className={value.length < 10 ? "whole" : ""}>{value}</strong>
        </span>
      )}
    </button>
  )
}

/** The entries behind a finding: those that it is about, and those of other items that it was worked out with. */
const behind = (finding: Finding, record: JobRecord): { own: Held[]; others: Held[] } => {
  const held = record.entries.filter((one) => finding.rests.includes(one.entry) && one.fact.kind !== "service")
  const isOwn = (one: Held) => finding.item === undefined || one.item === finding.item
  return { own: held.filter(isOwn), others: held.filter((one) => !isOwn(one)) }
}

const Head = ({ finding, answered }: { finding: Finding; answered: boolean }) => {
  const stop = finding.severity === "stop"
  return (
    <summary>
      <h3>
        <State shape={stop ? "stop" : "warn"} words={stop ? "Stop" : "Warning"} />
        {finding.item && <span>{showItem(finding.item)}</span>}
        {!answered && <span className="quiet">not answered yet</span>}
      </h3>
      <p className="warning-words">{finding.spoken}</p>
    </summary>
  )
}

export const WarningCard = ({ finding, record, among, first, keep, open }: CardProps) => {
  const [keeping, setKeeping] = useState(false)
  const { own, others } = behind(finding, record)
  const answered = record.warnings.some((one) => one.warning === warningKey(finding) && one.answered !== null)
  return (
    <details className={finding.severity === "stop" ? "warning warning-stop" : "warning warning-look"} open={first}>
      <Head finding={finding} answered={answered} />
      <div className="warning-body">
        <p>{finding.shown}</p>
        <p className="quiet">{showSource(finding.source, finding.status)}</p>
        <Working finding={finding} others={others} open={open} />
        <div className="warning-ways">
          {own.map((held) => (
            <PutRight key={held.entry} held={held} open={open} />
          ))}
          {!keeping && (
            <button type="button" onClick={() => setKeeping(true)}>
              Keep it because…
            </button>
          )}
        </div>
        {keeping && <KeepForm name={`${among}-${warningKey(finding)}`} keep={keep} cancel={() => setKeeping(false)} />}
      </div>
    </details>
  )
}
