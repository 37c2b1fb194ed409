/** A check-in that nobody answered: over everything, until somebody does. The app calls nobody; the links do, by tap. */
import { useEffect, useRef } from "react"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"
import { ContactWays } from "../settings/ContactWays"
import { useSettings } from "../settings/useSettings"

export const Alarm = ({ view, session }: { view: SessionView; session: Session }) => {
  const dialog = useRef<HTMLDialogElement>(null)
  const { contact } = useSettings(session.settings)
  useEffect(() => {
    if (dialog.current && !dialog.current.open) dialog.current.showModal()
  }, [])
  return (
    // It cannot be put aside by Escape: only an answer ends it.
    <dialog ref={dialog} className="alarm" aria-labelledby="alarm-head" onCancel={(event) => event.preventDefault()}>
      <h2 id="alarm-head">Are you all right?</h2>
      <p>
        No answer came to the check-in at {view.dialogue.record.place}. If you found this phone: look for the worker,
        and get help. This app has called nobody.
      </p>
      <button
        type="button"
        className="main-button"
        onClick={() => session.send({ type: "tapped", act: { kind: "all_right" } })}
      >
        <Icon name="yes" />
        <span>I’m all right</span>
      </button>
      <ContactWays contact={contact} />
    </dialog>
  )
}
