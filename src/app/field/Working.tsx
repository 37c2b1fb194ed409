/** How a finding was worked out, for those who want to see the sum. */
import type { Finding } from "../../facts/Finding"

export const Working = ({ finding }: { finding: Finding }) => {
  const { working } = finding
  if (!working) return null
  return (
    <details className="working">
      <summary>How it was worked out</summary>
      <p>{working.formula}</p>
      <p>
        {working.numbers}: <strong>{working.result}</strong>
      </p>
      {working.row && <p className="quiet">From the row “{working.row}”.</p>}
    </details>
  )
}
