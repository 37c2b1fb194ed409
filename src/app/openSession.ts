/** Fetches what knows the trade while the opening screen is painted, then starts the keeping for offline use. */
import { OfflineWatch } from "./offline/OfflineWatch"
import { registerWorker } from "./offline/registerWorker"
import { createWatchedSession } from "./offline/watchedSession"
import { whenLoaded } from "./offline/whenLoaded"
import { workerContainer } from "./offline/workerContainer"
import type { Session } from "./Session"

/** Rejects where the rest of the app could not be fetched. */
export const openSession = async (): Promise<Session> => {
  const container = workerContainer()
  const { createSession } = await import("./wiring")
  const watch = new OfflineWatch(navigator.storage)
  const session = createWatchedSession(createSession(), watch)
  void whenLoaded(session).then(({ jobs }) => watch.lookAtStorage(jobs.length > 0))
  if (container) void registerWorker(container, watch)
  return session
}
