/** The frame of a panel at the desk: its fields, why it is done, what is said to it, and the two ways out. */
import { type ReactNode, useEffect, useRef, useState } from "react"
import type { Outcome } from "../../../facts/Outcome"

interface PanelFormProps {
  head: string
  doIt: string
  /** What is to be filled in. */
  children: ReactNode
  /** What stands below the reason, such as what would come of it. */
  below: ReactNode
  submit: (reason: string) => Promise<Outcome>
  cancel: () => void
}

/** The panel was asked for by a key or a button, so the focus follows the person's own act. */
const useFirstField = () => {
  const form = useRef<HTMLFormElement>(null)
  useEffect(() => {
    const field = form.current?.querySelector<HTMLInputElement | HTMLSelectElement>("input, select")
    field?.focus()
    if (field instanceof HTMLInputElement) field.select()
  }, [])
  return form
}

export const PanelForm = ({ head, doIt, children, below, submit, cancel }: PanelFormProps) => {
  const [reason, setReason] = useState("")
  const [refused, setRefused] = useState("")
  const form = useFirstField()
  return (
    <form
      ref={form}
      className="desk-panel"
      aria-labelledby="panel-head"
      onSubmit={(event) => {
        event.preventDefault()
        void submit(reason).then((outcome) => {
          if (!outcome.ok) setRefused(outcome.because)
        })
      }}
    >
      <h3 id="panel-head">{head}</h3>
      {children}
      <label htmlFor="desk-reason">Why</label>
      <input
        id="desk-reason"
        value={reason}
        maxLength={500}
        required
        autoComplete="off"
        onChange={(event) => setReason(event.target.value)}
      />
      {below}
      <p className="refused" role="alert">
        {refused}
      </p>
      <div className="desk-ways">
        <button type="submit" className="main-button">
          {doIt}
        </button>
        <button type="button" onClick={cancel}>
          Not now
        </button>
      </div>
    </form>
  )
}
