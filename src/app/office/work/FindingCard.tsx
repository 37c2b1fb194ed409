/** One finding at the desk: what it says, where the figure comes from, how it was worked out, and why it was kept. */
import type { Finding } from "../../../facts/Finding"
import { showSource } from "../../field/showSource"
import { Working } from "../../field/Working"
import { type Shape, State } from "../../parts/Mark"
import { showItem } from "../../parts/showItem"

const marks: Record<Finding["severity"], { shape: Shape; words: string }> = {
  stop: { shape: "stop", words: "Stop" },
  warn: { shape: "warn", words: "Warning" },
  note: { shape: "note", words: "Note" },
  ok: { shape: "yes", words: "Fits" },
}

/** The mark of a finding; a kept one has its own. */
export const FindingMark = ({ finding, kept = false }: { finding: Finding; kept?: boolean }) =>
  kept ? <State shape="kept" words="Kept on purpose" /> : <State {...marks[finding.severity]} />

export const FindingCard = ({ finding, reason }: { finding: Finding; reason: string | null }) => (
  <div className={`finding finding-${reason === null ? finding.severity : "kept"}`}>
    <FindingMark finding={finding} kept={reason !== null} />
    <p>
      {finding.item && <strong>{showItem(finding.item)}. </strong>}
      {finding.shown}
    </p>
    {reason !== null && <p className="remark-reason">Reason given: “{reason}”</p>}
    <p className="quiet">{showSource(finding.source, finding.status)}</p>
    <Working finding={finding} />
  </div>
)
