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
  const container = workerContainer()
  // A service worker answers for the page only once everything, the ear pack included, is on the device.
  const isEarHere = container?.controller != null
  // Its worker takes longest and leaves the page alone, so it is the one thing that does not wait for the first paint.
  const ear = import("./openEar").then(({ openEar }) => openEar(isEarHere))
  ear.catch(() => undefined)
  const load = async () => {
    await painted()
    const [{ createSession }, microphone] = await Promise.all([import("./wiring"), ear, laterScreens.job.fetch()])
    return createSession({ speaker, settings, speakLoud, microphone, isEarHere })
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
  if (container) void registerWorker(container, watch)
  return session
}
