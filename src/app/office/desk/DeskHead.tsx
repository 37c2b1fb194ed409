/** The job's name, how far its log can be relied on, whether it is signed, and what can be done with it as a whole. */
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { Brand } from "../../parts/Brand"
import { Icon } from "../../parts/Icon"
import { State } from "../../parts/Mark"
import { showMoment } from "../../parts/showMoment"
import { roleWords } from "./SignDialog"
import { TrustMark } from "./TrustDialog"

export type DeskDialog = "sign" | "files" | "keys" | "trust"

interface HeadProps {
  job: ReviewedJob
  open: (dialog: DeskDialog) => void
  back: () => void
}

const SignedMark = ({ job: { record } }: { job: ReviewedJob }) => {
  const { signatures, reopenings } = record
  if (signatures.length > 0)
    return (
      <State shape="yes" words={`Signed: ${signatures.map((one) => roleWords[one.role] ?? one.role).join(", ")}`} />
    )
  if (reopenings.length > 0) return <State shape="warn" words="Opened again after signing" />
  return <State shape="bare" words="Not signed" />
}

export const DeskHead = ({ job, open, back }: HeadProps) => (
  <header className="desk-head">
    <button type="button" className="small-button" onClick={back}>
      <Icon name="undo" />
      <span>All jobs</span>
    </button>
    <Brand />
    <div className="desk-place">
      <h1>{job.record.place || "A job without a place"}</h1>
      {job.record.openedAt && <p className="quiet">{showMoment(job.record.openedAt)}</p>}
    </div>
    <div className="desk-states">
      <button type="button" className="small-button" onClick={() => open("trust")}>
        <span className="unseen">The log: </span>
        <TrustMark trust={job.trust} />
      </button>
      <SignedMark job={job} />
    </div>
    <div className="desk-tools">
      <button type="button" aria-keyshortcuts="s" onClick={() => open("sign")}>
        <Icon name="sign" />
        <span>Sign</span>
      </button>
      <button type="button" aria-keyshortcuts="d" onClick={() => open("files")}>
        <Icon name="file" />
        <span>Files</span>
      </button>
      <button type="button" onClick={() => window.print()}>
        <Icon name="all" />
        <span>Print</span>
      </button>
      <button type="button" aria-keyshortcuts="?" aria-label="Keys" onClick={() => open("keys")}>
        <kbd>?</kbd>
      </button>
    </div>
  </header>
)
