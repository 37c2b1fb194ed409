/** One open warning: the value, the limit and what to do; the clause it rests on; and the two ways out of it. */
import { useState } from "react"
import type { Finding } from "../../facts/Finding"
import type { Held, JobRecord } from "../../record/JobRecord"
import { State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"
import { KeepForm } from "./KeepForm"
import { showSource } from "./showSource"

interface CardProps {
  finding: Finding
  record: JobRecord
  keep: (reason: string) => void
  open: (entry: string) => void
}

const PutRight = ({ held, open }: { held: Held; open: (entry: string) => void }) => {
  const { label, value } = showFact(held.fact)
  return (
    <button type="button" className="put-right" onClick={() => open(held.entry)}>
      <span>
        Change {label.toLowerCase()} <strong>{value}</strong>
      </span>
    </button>
  )
}

export const WarningCard = ({ finding, record, keep, open }: CardProps) => {
  const [keeping, setKeeping] = useState(false)
  const stop = finding.severity === "stop"
  const behind = record.entries.filter((held) => finding.rests.includes(held.entry) && held.fact.kind !== "service")
  return (
    <article className={stop ? "warning warning-stop" : "warning warning-look"}>
      <h3>
        <State shape={stop ? "stop" : "warn"} words={stop ? "Stop" : "Warning"} />
        {finding.item && <span>{showItem(finding.item)}</span>}
      </h3>
      <p className="warning-words">{finding.spoken}</p>
      <p>{finding.shown}</p>
      <p className="quiet">{showSource(finding.source, finding.status)}</p>
      <div className="warning-ways">
        {behind.map((held) => (
          <PutRight key={held.entry} held={held} open={open} />
        ))}
        {!keeping && (
          <button type="button" onClick={() => setKeeping(true)}>
            Keep it because…
          </button>
        )}
      </div>
      {keeping && <KeepForm name={finding.item ?? finding.rule} keep={keep} cancel={() => setKeeping(false)} />}
    </article>
  )
}
