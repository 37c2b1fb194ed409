/** The settings as a page of their own, before a job is open. */
import { Notices } from "../field/Notices"
import { Icon } from "../parts/Icon"
import type { Session, SessionView } from "../Session"
import { SettingsView } from "./SettingsView"

export const SettingsPage = ({ view, session }: { view: SessionView; session: Session }) => (
  <main className="start">
    <a className="button back" href="#jobs">
      <Icon name="back" />
      <span>Jobs</span>
    </a>
    <h1>Bothhands</h1>
    <Notices view={view} session={session} />
    <SettingsView view={view} session={session} />
  </main>
)
