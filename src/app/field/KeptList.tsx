/** What the rules also had to say: warnings kept on purpose with their reasons, and notes. */
import type { DialogueState } from "../../dialogue/DialogueState"
import type { Finding } from "../../facts/Finding"
import { isKept, warningKey } from "../../record/warningKey"
import { State } from "../parts/Mark"
import { showItem } from "../parts/showItem"
import { showSource } from "./showSource"
import { Working } from "./Working"

const Remark = ({ finding, reason }: { finding: Finding; reason: string | null }) => (
  <li className="remark">
    {reason === null ? <State shape="note" words="Note" /> : <State shape="kept" words="Kept on purpose" />}
    <p>
      {finding.item && <strong>{showItem(finding.item)}. </strong>}
      {finding.shown}
    </p>
    {reason !== null && <p>Reason given: “{reason}”</p>}
    <p className="quiet">{showSource(finding.source, finding.status)}</p>
    <Working finding={finding} />
  </li>
)

export const KeptList = ({ dialogue }: { dialogue: DialogueState }) => {
  const { record, checked } = dialogue
  const remarks = checked.findings.filter((one) => one.severity === "note" || isKept(record, one))
  if (remarks.length === 0) return null
  const reasonOf = (finding: Finding) =>
    record.warnings.find((one) => one.warning === warningKey(finding))?.kept ?? null
  return (
    <section aria-labelledby="remarks-head">
      <h3 id="remarks-head" className="remarks-head">
        Also to know
      </h3>
      <ul className="remarks">
        {remarks.map((finding) => (
          <Remark key={`${warningKey(finding)}|${finding.which ?? ""}`} finding={finding} reason={reasonOf(finding)} />
        ))}
      </ul>
    </section>
  )
}
