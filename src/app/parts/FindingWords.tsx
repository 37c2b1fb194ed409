/** What a finding says, of which part, why it was kept where it was, and where its figure comes from. */
import type { Finding } from "../../facts/Finding"
import { showItem } from "./showItem"
import { showSource } from "./showSource"

export const FindingWords = ({ finding, reason }: { finding: Finding; reason: string | null }) => (
  <>
    <p>
      {finding.item && <strong>{showItem(finding.item)}. </strong>}
      {finding.shown}
    </p>
    {reason !== null && <p className="remark-reason">Reason given: “{reason}”</p>}
    <p className="quiet">{showSource(finding.source, finding.status)}</p>
  </>
)
