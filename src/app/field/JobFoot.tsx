/** The end of the page: the job's file, the edition behind the checks, and who decides. */

import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"

export const JobFoot = ({ view, session }: { view: SessionView; session: Session }) => (
  <footer className="job-foot">
    <button type="button" onClick={() => session.saveJobFile()}>
      <Icon name="file" />
      <span>Save the job file</span>
    </button>
    <p className="quiet">
      Checked against {view.dialogue.record.pack}, as published. Check the edition in force, local rules and the network
      operator. The competent person decides and signs.
    </p>
    <p className="quiet">
      Ear: {view.ear.name}. Voice: {view.voice.name ?? "none on this device, read the screen"}.
    </p>
  </footer>
)
