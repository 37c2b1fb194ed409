/** One finding at the desk: what it says, where the figure comes from, how it was worked out, and why it was kept. */
import type { Finding } from "../../../facts/Finding"
import { FindingWords } from "../../parts/FindingWords"
import { type Shape, State } from "../../parts/Mark"
import { Working } from "../../parts/Working"

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
    <FindingWords finding={finding} reason={reason} />
    <Working finding={finding} />
  </div>
)
