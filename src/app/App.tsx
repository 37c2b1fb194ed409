/** Which of the screens is shown. One session, one page: nothing here is kept, so a reload loses nothing. */
import { StartView } from "./field/StartView"
import { LaterScreen } from "./laterScreens"
import { Opening } from "./Opening"
import { useHash } from "./parts/useHash"
import { useView } from "./parts/useView"
import type { Session, SessionView } from "./Session"

const BeforeJob = ({ view, session }: { view: SessionView; session: Session }) => {
  const hash = useHash()
  if (hash === "#settings") return <LaterScreen name="settings" view={view} session={session} />
  if (hash === "#lesson") return <LaterScreen name="lesson" view={view} session={session} />
  if (hash === "#learn") return <LaterScreen name="learn" view={view} session={session} />
  return <StartView view={view} session={session} />
}

export const App = ({ session }: { session: Session }) => {
  const view = useView(session)
  return (
    <div className="app">
      {view.phase === "loading" && <Opening />}
      {view.phase === "start" && <BeforeJob view={view} session={session} />}
      {view.phase === "job" && <LaterScreen name="job" view={view} session={session} />}
    </div>
  )
}
