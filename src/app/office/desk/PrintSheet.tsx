/** The job on paper: every value that holds, what stands open or was kept, and who signed. Only printers see it. */
import { allHeld } from "../../../record/holding"
import type { Held } from "../../../record/JobRecord"
import { keptReason, openWarnings, warningKey } from "../../../record/warningKey"
import type { ReviewedJob } from "../../../review/ReviewedJob"
import { findPack } from "../../../rules/packs"
import { showFact } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"
import { showMoment } from "../../parts/showMoment"
import { deskState } from "./pointWords"
import { signatureWords } from "./SignDialog"

const Row = ({ held }: { held: Held }) => {
  const { label, value } = showFact(held.fact)
  return (
    <tr>
      <td>{held.item ? showItem(held.item) : ""}</td>
      <td>{label}</td>
      <td>{value}</td>
      <td>{deskState(held).words}</td>
      <td>{showMoment(held.at)}</td>
    </tr>
  )
}

const Values = ({ held }: { held: readonly Held[] }) => (
  <table>
    <thead>
      <tr>
        <th>Part</th>
        <th>What</th>
        <th>Value</th>
        <th>State</th>
        <th>When</th>
      </tr>
    </thead>
    <tbody>
      {held.map((one) => (
        <Row key={one.entry} held={one} />
      ))}
    </tbody>
  </table>
)

export const PrintSheet = ({ job }: { job: ReviewedJob }) => {
  const { record, checked, trust } = job
  const order = (held: Held) => record.items.indexOf(held.item ?? "job")
  const held = allHeld(record)
    .filter((one) => one.fact.kind !== "service")
    .sort((a, b) => order(a) - order(b) || a.seq - b.seq)
  const open = openWarnings(record, checked.findings)
  const kept = checked.findings.flatMap((finding) => {
    const reason = keptReason(record, finding)
    return reason ? [{ finding, reason }] : []
  })
  return (
    <div className="print-sheet" aria-hidden="true">
      <h1>{record.place}</h1>
      <p>
        {record.openedAt && showMoment(record.openedAt)}. {trust.lines} lines of log, chain ends in {trust.end}.
      </p>
      {trust.faults.map((fault) => (
        <p key={fault}>Fault of the log: {fault}</p>
      ))}
      <Values held={held} />
      {open.length > 0 && <h2>Open</h2>}
      {open.map((finding) => (
        <p key={warningKey(finding)}>
          {finding.item && `${showItem(finding.item)}: `}
          {finding.shown}
        </p>
      ))}
      {kept.length > 0 && <h2>Kept on purpose</h2>}
      {kept.map(({ finding, reason }) => (
        <p key={warningKey(finding)}>
          {finding.item && `${showItem(finding.item)}: `}
          {finding.shown} Reason given: “{reason}”
        </p>
      ))}
      <h2>Signed</h2>
      {record.signatures.length === 0 && <p>By nobody yet.</p>}
      {record.signatures.map((one) => (
        <p key={one.role}>{signatureWords(one)}</p>
      ))}
      <p>
        Advice from {findPack(record.pack)?.edition ?? record.pack}, as published. Check the edition in force, local
        rules and the network operator. The competent person decides and signs.
      </p>
    </div>
  )
}
