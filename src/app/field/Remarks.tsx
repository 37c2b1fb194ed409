/** What the rules had to say besides open warnings: kept on purpose with the reason, notes, and what fits. */

import type { Finding } from "../../facts/Finding"
import type { JobRecord } from "../../record/JobRecord"
import { keptReason, warningKey } from "../../record/warningKey"
import { FindingWords } from "../parts/FindingWords"
import { type Shape, State } from "../parts/Mark"
import { Working } from "../parts/Working"
import { RestsOn } from "./RestsOn"

interface RemarksProps {
  id: string
  title: string
  /** How one of these is marked. */
  mark: { shape: Shape; words: string }
  findings: readonly Finding[]
  record: JobRecord
  open: (entry: string) => void
}

type RemarkProps = Omit<RemarksProps, "id" | "title" | "findings"> & { finding: Finding }

const Remark = ({ finding, mark, record, open }: RemarkProps) => {
  return (
    <li className="remark">
      <State shape={mark.shape} words={mark.words} />
      <FindingWords finding={finding} reason={keptReason(record, finding)} />
      <RestsOn finding={finding} record={record} open={open} />
      <Working finding={finding} />
    </li>
  )
}

export const Remarks = ({ id, title, findings, ...rest }: RemarksProps) =>
  findings.length === 0 ? null : (
    <section aria-labelledby={id}>
      <h3 id={id} className="remarks-head">
        {title}
      </h3>
      <ul className="remarks">
        {findings.map((finding) => (
          <Remark key={`${warningKey(finding)}|${finding.which ?? ""}`} finding={finding} {...rest} />
        ))}
      </ul>
    </section>
  )
