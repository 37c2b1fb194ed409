/** The place, with the ways to the settings and out of the job. */

import type { Screen } from "../../facts/Interpretation"
import { Brand } from "../parts/Brand"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"

interface HeadProps {
  view: SessionView
  session: Session
  screen: Screen
}

export const JobHead = ({ view, session, screen }: HeadProps) => (
  <header className="job-head">
    <Brand />
    <h1>{view.dialogue.record.place}</h1>
    <a className="button small-button" href="#settings" aria-current={screen === "settings" ? "page" : undefined}>
      <Icon name="settings" />
      <span>Settings</span>
    </a>
    <button type="button" className="small-button" onClick={() => session.closeJob()}>
      <Icon name="leave" />
      <span>Leave</span>
    </button>
  </header>
)
