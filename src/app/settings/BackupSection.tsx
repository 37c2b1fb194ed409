/** Copies of the job files that the app writes by itself to a folder of the worker's, where the browser lets it. */
import { Icon } from "../parts/Icon"
import { Mark } from "../parts/Mark"
import { showMoment } from "../parts/showMoment"
import type { Session, SessionView } from "../Session"

interface BackupProps {
  view: SessionView
  session: Session
}

/** What stands at the moment, in a plain sentence or two. */
const stateWords = ({ at, folder, savedAt, because }: SessionView["backup"]): string => {
  switch (at) {
    case "missing":
      return "This browser lets no page write to a folder by itself. Save all jobs as one file now and then instead."
    case "off":
      return "Choose a folder, perhaps on a card or one that your office sees. Every job is copied there soon after each line."
    case "asleep":
      return `The browser asks anew at each visit before it lets the app write to “${folder}”. Starting to listen asks as well.`
    case "failed":
      return `The last copy to “${folder}” failed: ${because}. The jobs themselves are stored on this device.`
    case "on":
      return `Copies go to “${folder}”. ${savedAt ? `Last written ${showMoment(savedAt)}.` : "Nothing new to copy yet."}`
  }
}

const Ways = ({ view, session }: BackupProps) => {
  const { at } = view.backup
  const { backup } = session
  if (at === "missing") return null
  return (
    <div className="backup-ways">
      {at === "asleep" && (
        <button type="button" onClick={() => backup.wake()}>
          <Icon name="yes" />
          <span>Allow it again</span>
        </button>
      )}
      <button type="button" onClick={() => backup.choose()}>
        <Icon name="file" />
        <span>{at === "off" ? "Choose a folder" : "Another folder"}</span>
      </button>
      {at !== "off" && (
        <button type="button" onClick={() => backup.stop()}>
          <Icon name="no" />
          <span>Stop copying</span>
        </button>
      )}
    </div>
  )
}

export const BackupSection = ({ view, session }: BackupProps) => {
  const { at } = view.backup
  return (
    <section aria-labelledby="backup-head">
      <h3 id="backup-head">Copies in a folder</h3>
      <p className={`backup-state backup-${at}`} role="status">
        {at === "on" && <Mark shape="yes" />}
        {(at === "failed" || at === "asleep") && <Mark shape="warn" />}
        <span>{stateWords(view.backup)}</span>
      </p>
      <Ways view={view} session={session} />
      <p className="quiet">A copy is a job file as “Save job file” makes it. Copies are never deleted by the app.</p>
    </section>
  )
}
