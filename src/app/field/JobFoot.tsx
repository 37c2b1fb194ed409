/** The end of the page: the job's file, the edition behind the checks and what is newer, and who decides. */
import { findPack } from "../../rules/packs"

import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"
import { ShareButtons } from "./ShareButtons"

const Edition = ({ id }: { id: string }) => {
  const pack = findPack(id)
  return (
    <div className="cautions">
      <p>
        Advice from {pack?.edition ?? id}, as published. {pack?.newer}
      </p>
      {pack?.thin && <p>This rule set is thin: for orientation only.</p>}
      <p>Check the edition in force, local rules and the network operator. The competent person decides and signs.</p>
    </div>
  )
}

export const JobFoot = ({ view, session }: { view: SessionView; session: Session }) => (
  <footer className="job-foot">
    <button type="button" onClick={() => session.saveJobFile()}>
      <Icon name="file" />
      <span>Save the job file</span>
    </button>
    <button type="button" onClick={() => session.saveReport()}>
      <Icon name="file" />
      <span>Save a report (PDF)</span>
    </button>
    <ShareButtons session={session} />
    <Edition id={view.dialogue.record.pack} />
    <p className="quiet">
      Ear: {view.ear.name}. Voice: {view.voice.name ?? "none on this device, read the screen"}.
    </p>
  </footer>
)
