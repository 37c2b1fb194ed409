/**
 * A new value by hand, for the same place on the record. What is typed is checked by the schema of the fact and by
 * nothing else; whether it breaks a rule is for the rules to say afterwards.
 */
import { useState } from "react"
import type { RecordedFact } from "../../facts/Fact"
import { ChangeField } from "../parts/ChangeField"
import { type Draft, draftOf, parseDraft } from "../parts/changeDraft"

interface ChangeProps {
  fact: RecordedFact
  save: (fact: RecordedFact, reason: string) => void
  cancel: () => void
}

export const ChangeForm = ({ fact, save, cancel }: ChangeProps) => {
  const [draft, setDraft] = useState<Draft>(() => draftOf(fact))
  const [reason, setReason] = useState("")
  const [refused, setRefused] = useState("")
  return (
    <form
      className="change-form"
      onSubmit={(event) => {
        event.preventDefault()
        const parsed = parseDraft(fact, draft)
        if (parsed.ok) save(parsed.value, reason.trim() || "changed on the screen")
        else setRefused(parsed.because)
      }}
    >
      <ChangeField fact={fact} draft={draft} change={setDraft} />
      <label htmlFor="change-reason">Why (may stay empty)</label>
      <input
        id="change-reason"
        value={reason}
        maxLength={200}
        autoComplete="off"
        onChange={(event) => setReason(event.target.value)}
      />
      <p className="refused" role="alert">
        {refused}
      </p>
      <div className="keep-ways">
        <button type="submit" className="main-button">
          Put it on record
        </button>
        <button type="button" onClick={cancel}>
          Not now
        </button>
      </div>
    </form>
  )
}
