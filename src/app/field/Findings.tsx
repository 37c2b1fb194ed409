/** Everything the rules say about the job: open warnings first, then what was kept on purpose, notes, and what fits. */
import type { DialogueState } from "../../dialogue/DialogueState"
import { keptWarnings, openWarnings } from "../../record/warningKey"
import type { Session } from "../Session"
import { Remarks } from "./Remarks"
import { Warnings } from "./Warnings"

interface FindingsProps {
  dialogue: DialogueState
  session: Session
  open: (entry: string) => void
}

export const Findings = ({ dialogue, session, open }: FindingsProps) => {
  const { record, checked } = dialogue
  const kept = keptWarnings(record, checked.findings)
  const notes = checked.findings.filter((one) => one.severity === "note")
  const fits = checked.findings.filter((one) => one.severity === "ok")
  const nothingOpen = openWarnings(record, checked.findings).length === 0
  const shared = { record, open }
  return (
    <section className="findings" aria-labelledby="findings-head">
      <h2 id="findings-head">Findings</h2>
      {nothingOpen && (
        <p className="quiet">
          No warning is open. That says nothing of what was not told: the rules see the record alone.
        </p>
      )}
      <Warnings dialogue={dialogue} session={session} open={open} among="findings" />
      <Remarks
        id="kept-head"
        title="Kept on purpose"
        mark={{ shape: "kept", words: "Kept" }}
        findings={kept}
        {...shared}
      />
      <Remarks id="notes-head" title="Notes" mark={{ shape: "note", words: "Note" }} findings={notes} {...shared} />
      {fits.length > 0 && (
        <details className="working">
          <summary>What fits its rule: {fits.length}</summary>
          <Remarks id="fits-head" title="Fits" mark={{ shape: "yes", words: "Fits" }} findings={fits} {...shared} />
        </details>
      )}
    </section>
  )
}
