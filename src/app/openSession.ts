/**
 * The session of the page. The start page needs the store alone, so what knows the trade is fetched once that is drawn;
 * then the keeping for offline use starts.
 */
import { createIndexedDbStore } from "../record/indexedDbStore"
import { chooseVoice } from "../speech/chooseVoice"
import { keepAwake } from "./device/keepAwake"
import { watchReturn } from "./device/watchReturn"
import { createEarlySession } from "./EarlySession"
import { laterScreens } from "./laterScreens"
import { OfflineWatch } from "./offline/OfflineWatch"
import { registerWorker } from "./offline/registerWorker"
import { createWatchedSession } from "./offline/watchedSession"
import { whenLoaded } from "./offline/whenLoaded"
import { workerContainer } from "./offline/workerContainer"
import type { Session } from "./Session"
import type { SettingsKeeper } from "./settings/SettingsKeeper"
import { voiceSettingsOf } from "./settings/voiceSettingsOf"

/** Once the browser has painted what it was given. */
const painted = () => new Promise<void>((fulfil) => requestAnimationFrame(() => setTimeout(fulfil)))

export const openSession = (settings: SettingsKeeper): Session => {
  let loud = false
  const store = createIndexedDbStore()
  const speaker = chooseVoice({
    packFolder: "./voice/",
    settings: () => voiceSettingsOf(settings.snapshot(), loud),
  })
  const speakLoud = (on: boolean) => {
    loud = on
  }
  const load = async () => {
    await painted()
    const [{ createSession }] = await Promise.all([import("./wiring"), laterScreens.job.fetch()])
    return createSession({ speaker, settings, speakLoud })
  }
  const watch = new OfflineWatch(navigator.storage)
  const session = createWatchedSession(createEarlySession({ store, speaker, settings, load }), watch)
  void whenLoaded(session).then(({ jobs }) => watch.lookAtStorage(jobs.length > 0))
  keepAwake(session)
  watchReturn({
    session,
    page: document,
    now: () => performance.now(),
    later: (act, ms) => void setTimeout(act, ms),
  })
  const container = workerContainer()
  if (container) void registerWorker(container, watch)
  return session
}
