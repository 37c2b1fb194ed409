/** Which of the screens is shown. One session, one page: nothing here is kept, so a reload loses nothing. */
import { JobView } from "./field/JobView"
import { StartView } from "./field/StartView"
import { Opening } from "./Opening"
import { useView } from "./parts/useView"
import type { Session } from "./Session"

export const App = ({ session }: { session: Session }) => {
  const view = useView(session)
  return (
    <div className="app">
      {view.phase === "loading" && <Opening />}
      {view.phase === "start" && <StartView view={view} session={session} />}
      {view.phase === "job" && <JobView view={view} session={session} />}
    </div>
  )
}
