/** Fetches what knows the trade while the opening screen is painted, and settles which version runs before a job can. */
import { OfflineWatch } from "./offline/OfflineWatch"
import { registerWorker } from "./offline/registerWorker"
import { takeWaitingVersion } from "./offline/takeWaitingVersion"
import { createWatchedSession } from "./offline/watchedSession"
import type { Session } from "./Session"

/** None in development, and none on a page that came over plain http from another machine: browsers offer none there. */
const workers = (): ServiceWorkerContainer | undefined =>
  import.meta.env.PROD && "serviceWorker" in navigator ? navigator.serviceWorker : undefined

const never = new Promise<never>(() => {})

/** Rejects where the rest of the app could not be fetched. */
export const openSession = async (): Promise<Session> => {
  const container = workers()
  const rest = import("./wiring")
  // The version that waits may have been fetched to mend just this, so it is asked before a failure is shown.
  rest.catch(() => {})
  if (await takeWaitingVersion(container, () => location.reload())) return never
  const { createSession } = await rest
  const watch = new OfflineWatch(navigator.storage)
  const session = createWatchedSession(createSession(), watch)
  void watch.lookAtStorage(() => session.snapshot().jobs.length > 0)
  if (container) void registerWorker(container, watch)
  return session
}
