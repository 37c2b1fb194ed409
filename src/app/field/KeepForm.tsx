/** The reason without which no warned value is kept. */
import { useEffect, useRef, useState } from "react"

interface KeepProps {
  /** Tells several forms on one page apart. */
  name: string
  keep: (reason: string) => void
  cancel: () => void
}

export const KeepForm = ({ name, keep, cancel }: KeepProps) => {
  const [reason, setReason] = useState("")
  const field = useRef<HTMLInputElement>(null)
  const id = `keep-${name.replace(/\W/g, "-")}`
  // The field was asked for by a tap, so the focus follows the worker's own act.
  useEffect(() => field.current?.focus(), [])
  return (
    <form
      className="keep-form"
      onSubmit={(event) => {
        event.preventDefault()
        if (reason.trim()) keep(reason.trim())
      }}
    >
      <label htmlFor={id}>Keep it because</label>
      <input
        id={id}
        value={reason}
        maxLength={500}
        required
        autoComplete="off"
        ref={field}
        onChange={(event) => setReason(event.target.value)}
      />
      <div className="keep-ways">
        <button type="submit">Keep it</button>
        <button type="button" onClick={cancel}>
          Not now
        </button>
      </div>
    </form>
  )
}
