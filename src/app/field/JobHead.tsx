/** The place, with the way out of the job. */

import { Brand } from "../parts/Brand"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"

export const JobHead = ({ view, session }: { view: SessionView; session: Session }) => (
  <header className="job-head">
    <Brand />
    <h1>{view.dialogue.record.place}</h1>
    <button type="button" className="small-button" onClick={() => session.closeJob()}>
      <Icon name="leave" />
      <span>Leave</span>
    </button>
  </header>
)
