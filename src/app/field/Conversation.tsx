/** What is being asked, what was read back, and the last words of both sides, in the order the eye needs them. */
import type { RecordedFact } from "../../facts/Fact"
import { itemOf } from "../../record/slotOf"
import { Icon } from "../parts/Icon"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"
import type { Session, SessionView } from "../Session"
import { nextHint } from "./nextHint"
import { ReadBackValues } from "./ReadBackValues"

const showCandidate = (fact: RecordedFact) => {
  const { label, value } = showFact(fact)
  return { label: fact.kind === "step_done" ? "" : label, value: fact.kind === "step_done" ? label : value }
}

/** The label is seen only where the candidates differ in it; it is always there to be heard. */
const Candidates = ({ facts, pick }: { facts: readonly RecordedFact[]; pick: (fact: RecordedFact) => void }) => {
  const alike = new Set(facts.map((fact) => fact.kind)).size < 2
  return (
    <ul className="candidates">
      {facts.map((fact) => {
        const { label, value } = showCandidate(fact)
        return (
          <li key={`${itemOf(fact)} ${label} ${value}`}>
            <button type="button" onClick={() => pick(fact)}>
              <span className={alike ? "unseen" : "quiet"}>{label}</span> <strong>{value}</strong>
            </button>
          </li>
        )
      })}
    </ul>
  )
}

const Asked = ({ view, session }: { view: SessionView; session: Session }) => {
  const { question, readBack } = view.dialogue
  if (question)
    return (
      <div className="asked asked-question">
        <h2 className="kicker">{question.item ? `Asked, for ${showItem(question.item).toLowerCase()}` : "Asked"}</h2>
        <p className="asked-words">{question.words}</p>
        <p className="quiet">{question.because}</p>
        <Candidates
          facts={question.candidates}
          pick={(fact) => session.send({ type: "entered", facts: [fact], reason: "picked from what was asked" })}
        />
      </div>
    )
  if (readBack) return <ReadBackValues dialogue={view.dialogue} readBack={readBack} />
  const hint = nextHint(view.dialogue)
  return (
    <div className="asked asked-hint">
      <h2 className="kicker">Next{view.dialogue.item ? `, on ${showItem(view.dialogue.item).toLowerCase()}` : ""}</h2>
      <p className="asked-words">{hint.words}</p>
      <p className="quiet">{hint.example}</p>
    </div>
  )
}

const Heard = ({ view }: { view: SessionView }) => {
  const { lastHeard } = view.dialogue
  return (
    <div className="turn-line">
      <dt>
        <Icon name="ear" />
        <span>Heard</span>
      </dt>
      <dd className={lastHeard && !lastHeard.understood ? "not-understood" : ""}>
        {lastHeard ? `“${lastHeard.text}”` : "nothing yet"}
        {lastHeard && !lastHeard.understood && <span className="quiet">, and wrote nothing</span>}
      </dd>
    </div>
  )
}

const Said = ({ view }: { view: SessionView }) => {
  const { saying } = view.voice
  const words = saying ?? view.dialogue.lastSaid
  return (
    <div className={saying ? "turn-line saying" : "turn-line"}>
      <dt>
        <Icon name="voice" />
        <span>{saying ? "Saying" : "Said"}</span>
      </dt>
      <dd>{words || "nothing yet"}</dd>
    </div>
  )
}

export const Conversation = ({ view, session }: { view: SessionView; session: Session }) => (
  <section className="conversation" aria-label="Conversation">
    <Asked view={view} session={session} />
    <dl className="turns">
      <Heard view={view} />
      <Said view={view} />
    </dl>
  </section>
)
