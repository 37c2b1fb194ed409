/** Everything about one point: the value, what the rules say of it, the words it came from, its history, and what can be done. */
import { type Ref, useMemo } from "react"
import type { Outcome } from "../../../facts/Outcome"
import type { Stretch } from "../../../record/strike"
import { keptReason, warningKey } from "../../../record/warningKey"
import type { Change } from "../../../review/Change"
import type { ChangeTools } from "../../../review/draftChange"
import type { Interpret } from "../../../review/lightUp"
import type { Point } from "../../../review/Point"
import { passageOf } from "../../../review/passage"
import type { Check, ReviewedJob } from "../../../review/ReviewedJob"
import { State } from "../../parts/Mark"
import { showFact } from "../../parts/showFact"
import { showMoment } from "../../parts/showMoment"
import { ChangePanel } from "./ChangePanel"
import { type Panel, panelsOf, sentenceOf } from "./changeOf"
import { FindingCard } from "./FindingCard"
import { History } from "./History"
import { PassageView } from "./PassageView"
import type { SoundOf } from "./PlaySound"
import { deskState, pointHeads, pointName } from "./pointWords"
import { StrikePanel } from "./StrikePanel"

export interface DetailProps {
  point: Point
  job: ReviewedJob
  panel: Panel | null
  setPanel: (panel: Panel | null) => void
  tools: () => ChangeTools
  check: Check
  interpret: Interpret
  soundOf: SoundOf
  save: (change: Change, reason: string) => Promise<Outcome>
  strike: (stretches: readonly Stretch[]) => Promise<Outcome>
  accept: () => void
  head: Ref<HTMLHeadingElement>
}

const ways: Record<Panel, { words: string; key: string }> = {
  value: { words: "New value", key: "E" },
  sentence: { words: "Type the sentence again", key: "T" },
  keep: { words: "Keep it because…", key: "B" },
  withdraw: { words: "Take it back", key: "U" },
  strike: { words: "Strike private words", key: "X" },
}

const heardIn = ({ lines }: ReviewedJob, id: string | null) => {
  const line = lines.find((one) => one.type === "heard" && one.heard.id === id)
  return line?.type === "heard" ? line : null
}

/** Findings that rest on the value, and the point's own. */
const findingsFor = ({ checked }: ReviewedJob, { held, finding }: Point) => {
  const resting = held ? checked.findings.filter((one) => one.rests.includes(held.entry)) : []
  return finding ? [finding, ...resting.filter((one) => one !== finding)] : resting
}

const Head = ({ point, head }: { point: Point; head: Ref<HTMLHeadingElement> }) => {
  const { held, kind, ask, fault, reason, doubt } = point
  const state = held ? deskState(held) : pointHeads[kind]
  return (
    <header className="detail-head">
      <h2 ref={head} tabIndex={-1}>
        {pointName(point)}
      </h2>
      {held && <p className="detail-value">{showFact(held.fact).value}</p>}
      {doubt && <p className="detail-fault">{doubt}</p>}
      {fault && <p className="detail-fault">{fault}</p>}
      {ask && (
        <p className="detail-fault">
          It was asked because {ask.because}
          {ask.candidates && ask.candidates.length > 0 && `; it may have been ${ask.candidates.join(" or ")}`}.
        </p>
      )}
      <p className="detail-states">
        <State shape={state.shape} words={state.words} />
        {kind === "changed" && <State shape="hand" words="changed after signing" />}
        {held && <span className="quiet">{showMoment(held.at)}</span>}
      </p>
      {kind === "changed" && reason && <p>{reason}</p>}
    </header>
  )
}

const Ways = ({ point, setPanel, accept }: Pick<DetailProps, "point" | "setPanel" | "accept">) => (
  <div className="desk-ways">
    {point.held && point.held.accepted === null && (
      <button type="button" className="main-button" aria-keyshortcuts="y" onClick={accept}>
        Yes, it is right <kbd>Y</kbd>
      </button>
    )}
    {panelsOf(point).map((panel) => (
      <button
        key={panel}
        type="button"
        aria-keyshortcuts={ways[panel].key.toLowerCase()}
        onClick={() => setPanel(panel)}
      >
        {ways[panel].words} <kbd>{ways[panel].key}</kbd>
      </button>
    ))}
  </div>
)

const OpenPanel = (props: DetailProps & { panel: Panel }) => {
  const { panel, point, job, setPanel, strike } = props
  const passage = passageOf(job.lines, point.held, point.heard)
  const last = heardIn(job, sentenceOf(point))
  const cancel = () => setPanel(null)
  if (panel === "strike") return last && <StrikePanel line={last} job={job} strike={strike} cancel={cancel} />
  // An answer such as "yes" says nothing by itself: the sentence to start from is the one that it answered.
  const sentence = passage.said.find((one) => one.heard)?.heard?.text ?? last?.heard.text ?? ""
  return <ChangePanel {...props} panel={panel} sentence={sentence} cancel={cancel} />
}

export const PointDetail = (props: DetailProps) => {
  const { point, job, panel, setPanel, interpret, soundOf, accept, head } = props
  const { held, item, heard } = point
  const passage = useMemo(() => passageOf(job.lines, held, heard), [job, held, heard])
  const light = useMemo(() => (held ? { fact: held.fact, item, interpret } : null), [held, item, interpret])
  const by = (entry: string) => job.lines.find((line) => line.id === entry)?.by ?? ""
  const findings = findingsFor(job, point)
  return (
    <section className="detail" aria-label="Detail">
      <Head point={point} head={head} />
      {panel ? <OpenPanel {...props} panel={panel} /> : <Ways point={point} setPanel={setPanel} accept={accept} />}
      <PassageView passage={passage} light={light} soundOf={soundOf} />
      {findings.length > 0 && (
        <section className="detail-findings" aria-labelledby="findings-head">
          <h3 id="findings-head">What the rules say</h3>
          {findings.map((finding) => (
            <FindingCard
              key={`${warningKey(finding)}|${finding.which ?? ""}`}
              finding={finding}
              reason={keptReason(job.record, finding)}
            />
          ))}
        </section>
      )}
      {held && <History held={held} record={job.record} by={by} />}
    </section>
  )
}
