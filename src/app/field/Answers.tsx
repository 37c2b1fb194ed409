/** The answers by tap, the same as by voice, and the ear's switch. Kept at the thumb on a phone. */

import { Icon, type IconName } from "../parts/Icon"
import { Mark } from "../parts/Mark"
import type { Session, SessionView } from "../Session"
import { awaited } from "./awaited"
import { EarState, earStateOf } from "./EarState"

const Answer = ({ icon, words, look, tap }: { icon: IconName; words: string; look: string; tap: () => void }) => (
  <button type="button" className={`answer ${look}`} onClick={tap}>
    <Icon name={icon} />
    <span>{words}</span>
  </button>
)

export const Answers = ({ view, session }: { view: SessionView; session: Session }) => {
  const about = awaited(view.dialogue)
  const waits = about !== null
  const state = earStateOf(view)
  const on = state !== "stopped" && state !== "paused"
  const listen = () => {
    if (state === "paused") session.send({ type: "tapped", act: { kind: "start_listening" } })
    else session.listen(!on)
  }
  return (
    <section className={waits ? "answers answers-waited" : "answers"} aria-label="Answers">
      <div className="ear-row">
        <EarState view={view} />
        <button type="button" className="listen-button" onClick={listen}>
          <Icon name={on ? "earOff" : "ear"} />
          <span>{on ? "Stop" : "Listen"}</span>
        </button>
      </div>
      {waits && (
        <p className="awaited">
          <Mark shape="awaiting" />
          <span>
            Yes or no to <strong>{about}</strong>
          </span>
        </p>
      )}
      <div className="answer-row">
        <Answer
          icon="yes"
          words="Yes"
          look={waits ? "answer-yes waits" : "answer-yes"}
          tap={() => session.send({ type: "tapped", act: { kind: "confirm", value: true } })}
        />
        <Answer
          icon="no"
          words="No"
          look={waits ? "answer-no waits" : "answer-no"}
          tap={() => session.send({ type: "tapped", act: { kind: "deny", value: true } })}
        />
        <Answer
          icon="undo"
          words="Undo"
          look="answer-other"
          tap={() => session.send({ type: "tapped", act: { kind: "undo", value: true } })}
        />
        <Answer
          icon="again"
          words="Say again"
          look="answer-other"
          tap={() => session.send({ type: "tapped", act: { kind: "repeat", value: true } })}
        />
      </div>
    </section>
  )
}
