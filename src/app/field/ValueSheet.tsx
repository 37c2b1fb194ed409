/**
 * One value with all that is known of it: its words, its state, what stood there before, and the ways to say yes to it,
 * change it or take it back. A native modal dialog, so that focus stays inside and Escape closes it.
 */
import { useEffect, useRef, useState } from "react"
import { historyOf } from "../../record/holding"
import { entryState } from "../parts/entryState"
import { Icon } from "../parts/Icon"
import { State } from "../parts/Mark"
import { showFact } from "../parts/showFact"
import { showItem } from "../parts/showItem"
import type { Session, SessionView } from "../Session"
import { ChangeForm } from "./ChangeForm"
import { ValueHistory } from "./ValueHistory"
import { ValueWords } from "./ValueWords"

interface SheetProps {
  entry: string
  view: SessionView
  session: Session
  close: () => void
}

const useModal = () => {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (dialog.current && !dialog.current.open) dialog.current.showModal()
  }, [])
  return dialog
}

export const ValueSheet = ({ entry, view, session, close }: SheetProps) => {
  const dialog = useModal()
  const [changing, setChanging] = useState(false)
  const { record } = view.dialogue
  const held = record.entries.find((one) => one.entry === entry)
  if (!held) return null
  const { label, value } = showFact(held.fact)
  const state = entryState(held)
  // A step is done or not, and a part is its name: both can only be taken back.
  const canChange = held.fact.kind !== "step_done" && held.fact.kind !== "service"
  const tap = (kind: "confirm" | "deny") => {
    session.send({ type: "tapped", act: { kind, value: true }, about: entry })
    close()
  }
  return (
    <dialog ref={dialog} className="sheet" aria-labelledby="sheet-head" onClose={close}>
      <h2 id="sheet-head" className="kicker">
        {held.item ? showItem(held.item) : "Value"}, {label.toLowerCase()}
      </h2>
      <p className={value.length > 14 ? "read-value read-long" : "read-value"}>{value}</p>
      <State shape={state.shape} words={state.words} />
      <ValueWords held={held} heard={view.heard} />
      {changing ? (
        <ChangeForm
          fact={held.fact}
          cancel={() => setChanging(false)}
          save={(fact, reason) => {
            session.send({ type: "entered", facts: [fact], reason })
            close()
          }}
        />
      ) : (
        <div className="sheet-ways">
          {held.accepted === null && held.withdrawn === null && (
            <button type="button" className="answer-yes waits" onClick={() => tap("confirm")}>
              <Icon name="yes" />
              <span>Yes, that is it</span>
            </button>
          )}
          {canChange && (
            <button type="button" onClick={() => setChanging(true)}>
              Change it
            </button>
          )}
          {held.withdrawn === null && (
            <button type="button" onClick={() => tap("deny")}>
              Take it back
            </button>
          )}
        </div>
      )}
      <ValueHistory earlier={historyOf(record, held)} />
      <button type="button" className="sheet-close" onClick={close}>
        Close
      </button>
    </dialog>
  )
}
