/** The same words for screen readers: what the app says when there is time, open warnings at once. */
import { openWarnings } from "../../record/warningKey"
import type { SessionView } from "../Session"

export const LiveWords = ({ view }: { view: SessionView }) => {
  const { dialogue, voice } = view
  const warnings = openWarnings(dialogue.record, dialogue.checked.findings)
  return (
    <>
      <div className="unseen" role="status" aria-live="polite">
        {voice.saying ?? dialogue.lastSaid}
      </div>
      <div className="unseen" role="alert" aria-live="assertive">
        {warnings.map((finding) => `Warning. ${finding.spoken}`).join(" ")}
      </div>
    </>
  )
}
