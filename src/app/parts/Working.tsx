/**
 * How a finding was worked out, for those who want to see the sum, and the other values it was worked out with: a wrong
 * supply makes a right bond look wrong.
 */
import type { Finding } from "../../facts/Finding"
import type { Held } from "../../record/JobRecord"
import { showFact } from "./showFact"
import { showItem } from "./showItem"

interface WorkingProps {
  finding: Finding
  /** Values of other items that went into it; a tap opens one. */
  others?: readonly Held[]
  open?: (entry: string) => void
}

const Other = ({ held, open }: { held: Held; open?: ((entry: string) => void) | undefined }) => {
  const { label, value } = showFact(held.fact)
  return (
    <li>
      <button type="button" className="value-row" onClick={() => open?.(held.entry)}>
        <span className="value-label">
          {held.item && `${showItem(held.item)}, `}
          {label.toLowerCase()}
        </span>
        <span className="value">{value}</span>
      </button>
    </li>
  )
}

export const Working = ({ finding, others = [], open }: WorkingProps) => {
  const { working } = finding
  if (!working && others.length === 0) return null
  return (
    <details className="working">
      <summary>How it was worked out</summary>
      {working && (
        <>
          <p>{working.formula}</p>
          <p>
            {working.numbers}: <strong>{working.result}</strong>
          </p>
          {working.row && <p className="quiet">From the row “{working.row}”.</p>}
        </>
      )}
      {others.length > 0 && (
        <ul className="others" aria-label="Worked out with">
          {others.map((held) => (
            <Other key={held.entry} held={held} open={open} />
          ))}
        </ul>
      )}
    </details>
  )
}
