/**
 * One value with all that is known of it: its words, its state, what stood there before, and the ways to say yes to it,
 * change it or take it back. A native modal dialog, so that focus stays inside and Escape closes it.
 */
import { useEffect, useRef, useState } from "react"
import { heldIn, historyOf } from "../../record/holding"
import { type EntryState, entryState } from "../parts/entryState"
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

/** Closing goes through the dialog itself, which gives the focus back to where it came from. */
const useModal = () => {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    if (dialog.current && !dialog.current.open) dialog.current.showModal()
  }, [])
  return { dialog, shut: () => dialog.current?.close() }
}

/** Another value came while the sheet was open. */
const replaced: EntryState = { shape: "gone", words: "no longer holds" }

export const ValueSheet = ({ entry, view, session, close }: SheetProps) => {
  const { dialog, shut } = useModal()
  const [changing, setChanging] = useState(false)
  const { record } = view.dialogue
  const held = record.entries.find((one) => one.entry === entry)
  if (!held) return null
  const { label, value } = showFact(held.fact)
  const holds = heldIn(record, held.slot)?.entry === entry
  const state = holds ? entryState(held) : replaced
  // A step is done or not, and a part is its name: both can only be taken back.
  const canChange = holds && held.fact.kind !== "step_done" && held.fact.kind !== "service"
  const tap = (kind: "confirm" | "deny") => {
    session.send({ type: "tapped", act: { kind, value: true }, about: entry })
    shut()
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
            shut()
          }}
        />
      ) : (
        <div className="sheet-ways">
          {holds && held.accepted === null && (
            <button type="button" className="answer-yes waits" onClick={() => tap("confirm")}>
              <Icon name="yes" />
              <span>Yes</span>
            </button>
          )}
          {canChange && (
            <button type="button" onClick={() => setChanging(true)}>
              Change it
            </button>
          )}
          {holds && (
            <button type="button" onClick={() => tap("deny")}>
              Take it back
            </button>
          )}
        </div>
      )}
      <ValueHistory earlier={historyOf(record, held)} />
      <button type="button" className="sheet-close" onClick={shut}>
        Close
      </button>
    </dialog>
  )
}
