/** The values that a finding rests on, each a way to its words and its history. */
import type { Finding } from "../../facts/Finding"
import type { Held, JobRecord } from "../../record/JobRecord"
import { itemOf } from "../../record/slotOf"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"

interface RestsProps {
  finding: Finding
  record: JobRecord
  open: (entry: string) => void
}

const nameOf = (held: Held, finding: Finding): string => {
  const { label, value } = showFact(held.fact)
  const item = itemOf(held.fact)
  const of = item && item !== finding.item ? `${showItem(item)}, ` : ""
  return held.fact.kind === "step_done" ? `${of}${label.toLowerCase()}` : `${of}${label.toLowerCase()} ${value}`
}

export const RestsOn = ({ finding, record, open }: RestsProps) => {
  const behind = record.entries.filter((one) => finding.rests.includes(one.entry) && one.fact.kind !== "service")
  if (behind.length === 0) return null
  return (
    <ul className="rests" aria-label="Rests on">
      {behind.map((held) => (
        <li key={held.entry}>
          <button type="button" className="step-chip" onClick={() => open(held.entry)}>
            {nameOf(held, finding)}
          </button>
        </li>
      ))}
    </ul>
  )
}
