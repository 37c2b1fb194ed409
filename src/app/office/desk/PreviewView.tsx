/** What a change would do: values that would come and go, and findings that would turn. */
import type { Finding } from "../../../facts/Finding"
import type { Held } from "../../../record/JobRecord"
import type { FindingTurn, Preview, ValueTurn } from "../../../review/previewChange"
import { showFact } from "../../parts/showFact"
import { showItem } from "../../parts/showItem"
import { FindingMark } from "./FindingCard"

const nameOf = (held: Held) => {
  const { label } = showFact(held.fact)
  return held.item ? `${showItem(held.item)}, ${label.toLowerCase()}` : label
}
const shownValue = (held: Held | null) => (held ? showFact(held.fact).value : "nothing")

const ValueLine = ({ turn }: { turn: ValueTurn }) => (
  <li>
    <span>{nameOf((turn.after ?? turn.before)!)}</span>
    <span className="turn-values">
      <del>{shownValue(turn.before)}</del> <span aria-hidden="true">→</span> <ins>{shownValue(turn.after)}</ins>
    </span>
  </li>
)

const Side = ({ finding, gone }: { finding: Finding | null; gone: boolean }) =>
  finding && (
    <p className={gone ? "turn-gone" : ""}>
      <FindingMark finding={finding} />{" "}
      <span>
        {gone && <span className="unseen">No longer: </span>}
        {finding.item && `${showItem(finding.item)}: `}
        {finding.shown}
      </span>
    </p>
  )

const FindingLine = ({ turn }: { turn: FindingTurn }) => (
  <li>
    <Side finding={turn.before} gone />
    <Side finding={turn.after} gone={false} />
  </li>
)

/** Whether the verdict itself would be another, and not only the figures in its words. */
const isTurned = ({ before, after }: FindingTurn) => (before?.severity ?? "ok") !== (after?.severity ?? "ok")

const FindingLines = ({ turns, label }: { turns: readonly FindingTurn[]; label: string }) => (
  <ul className="turn-findings" aria-label={label}>
    {turns.map((turn, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: drawn anew with every change
      <FindingLine key={index} turn={turn} />
    ))}
  </ul>
)

export const PreviewView = ({ preview }: { preview: Preview }) => {
  const { values, findings } = preview
  const turned = findings.filter(isTurned)
  const reworded = findings.filter((turn) => !isTurned(turn))
  return (
    <section className="preview" aria-labelledby="preview-head">
      <h4 id="preview-head">What would change</h4>
      {values.length === 0 && findings.length === 0 && <p className="quiet">Nothing on the record.</p>}
      <ul className="turn-list">
        {values.map((turn) => (
          <ValueLine key={turn.slot} turn={turn} />
        ))}
      </ul>
      {turned.length > 0 && <FindingLines turns={turned} label="Findings that would turn" />}
      {values.length > 0 && turned.length === 0 && <p className="quiet">No verdict would turn.</p>}
      {reworded.length > 0 && (
        <details>
          <summary>
            {reworded.length} {reworded.length === 1 ? "verdict stays" : "verdicts stay"}, with other figures
          </summary>
          <FindingLines turns={reworded} label="Verdicts that stay" />
        </details>
      )}
    </section>
  )
}
