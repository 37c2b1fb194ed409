/** Waits until a session has looked for the jobs on this device. */
import type { Session, SessionView } from "../Session"

/** The first view that is not that of loading. */
export const whenLoaded = (session: Session): Promise<SessionView> =>
  new Promise((fulfil) => {
    const look = () => {
      const view = session.snapshot()
      if (view.phase === "loading") return
      leave()
      fulfil(view)
    }
    const leave = session.subscribe(look)
    look()
  })
