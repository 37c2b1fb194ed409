/**
 * The end of a job: what stands open, said before anybody signs; then the signing, which the loop asks about as it does
 * by voice. Signing with something open is the worker's to decide, and the record says what it was.
 */
import { whatsLeft } from "../../dialogue/plan"
import { awaitingYes } from "../../record/holding"
import { keptWarnings, openWarnings } from "../../record/warningKey"
import { Icon } from "../parts/Icon"
import { type Shape, State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"
import { showMoment } from "../parts/showMoment"
import type { Session, SessionView } from "../Session"
import { ShareButtons } from "./ShareButtons"
import { showWanted } from "./showWanted"

interface Line {
  key: string
  words: string
  /** Where a tap leads to: a value, or the conversation about an item. */
  go: () => void
}

const Lines = ({ title, shape, lines }: { title: string; shape: Shape; lines: readonly Line[] }) =>
  lines.length === 0 ? null : (
    <section className="sign-lines">
      <h3>
        <State shape={shape} words={`${title}: ${lines.length}`} />
      </h3>
      <ul>
        {lines.map(({ key, words, go }) => (
          <li key={key}>
            <button type="button" className="line-button" onClick={go}>
              {words}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )

interface SignProps {
  view: SessionView
  session: Session
  open: (entry: string) => void
}

const Standing = ({ view, session, open }: SignProps) => {
  const { record, checked } = view.dialogue
  const goTo = (screen: string) => {
    window.location.hash = screen
  }
  const warnings = openWarnings(record, checked.findings).map((one, index) => ({
    key: `${one.rule} ${one.item ?? ""} ${index}`,
    words: one.spoken,
    go: () => goTo("findings"),
  }))
  const waiting = awaitingYes(record).map((held) => {
    const { label, value } = showFact(held.fact)
    const item = held.item ? `${showItem(held.item)}, ` : ""
    return { key: held.entry, words: `${item}${label.toLowerCase()} ${value}`, go: () => open(held.entry) }
  })
  const left = whatsLeft(record).map(({ item, wanted }) => ({
    key: item,
    words: `${showItem(item)}: ${wanted.map(showWanted).join(", ")}`,
    go: () => {
      session.send({ type: "tapped", act: { kind: "whats_left", subject: item } })
      goTo("now")
    },
  }))
  const kept = keptWarnings(record, checked.findings).map((one, index) => {
    return { key: `${one.rule} ${index}`, words: one.spoken, go: () => goTo("findings") }
  })
  const nothing = warnings.length + waiting.length + left.length === 0
  return (
    <>
      {nothing && <State shape="yes" words="Nothing is open of what the app knows to ask for." />}
      <Lines title="Open warnings" shape="stop" lines={warnings} />
      <Lines title="Waiting for a yes" shape="awaiting" lines={waiting} />
      <Lines title="Not said yet" shape="bare" lines={left} />
      <Lines title="Kept on purpose" shape="kept" lines={kept} />
    </>
  )
}

const Asking = ({ view, session }: Pick<SignProps, "view" | "session">) => (
  <section className="sign-asking" aria-labelledby="sign-question">
    <p id="sign-question" className="asked-words">
      {view.dialogue.question?.words}
    </p>
    <div className="way-row">
      <button
        type="button"
        className="main-button"
        onClick={() => session.send({ type: "tapped", act: { kind: "confirm", value: true } })}
      >
        <Icon name="yes" />
        <span>Yes, sign off</span>
      </button>
      <button type="button" onClick={() => session.send({ type: "tapped", act: { kind: "deny", value: true } })}>
        <Icon name="no" />
        <span>No, not yet</span>
      </button>
    </div>
  </section>
)

const Signed = ({ view }: Pick<SignProps, "view">) => {
  const { signedOff } = view.dialogue.record
  if (!signedOff) return null
  return (
    <div className="signed">
      <State shape="yes" words={`Signed off ${showMoment(signedOff.at)}, by the ${signedOff.role}`} />
      {signedOff.undone.length > 0 && <p>Left open: {signedOff.undone.join(" ")}</p>}
      <p className="quiet">A value that is said or changed now opens the job again.</p>
    </div>
  )
}

export const SignOff = (props: SignProps) => {
  const { view, session } = props
  const asks = view.dialogue.question?.kind === "sign_off"
  return (
    <section className="sign-off" aria-labelledby="sign-head">
      <h2 id="sign-head">Sign off</h2>
      {asks && <Asking view={view} session={session} />}
      <Signed view={view} />
      <Standing {...props} />
      <p className="cautions">
        You sign as the competent person, by the edition in force and local rules. The app decides nothing and never
        says that an installation is in order.
      </p>
      {!asks && !view.dialogue.record.signedOff && (
        <button
          type="button"
          className="main-button"
          onClick={() => session.send({ type: "tapped", act: { kind: "sign_off" } })}
        >
          <Icon name="sign" />
          <span>Sign off this job</span>
        </button>
      )}
      <button type="button" onClick={() => session.saveJobFile()}>
        <Icon name="file" />
        <span>Save the job file</span>
      </button>
      <ShareButtons session={session} />
    </section>
  )
}
