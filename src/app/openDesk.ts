/** Fetches what knows the trade, for the office: no ear and no voice are woken for it. */
import type { Desk } from "./office/Desk"
import { registerWorker } from "./offline/registerWorker"
import { workerContainer } from "./offline/workerContainer"
import type { SettingsKeeper } from "./settings/SettingsKeeper"

/** Notices about versions are shown on the start page, not at the desk. */
const quiet = { newerReady: () => {}, notKept: () => {} }

/** Rejects where the rest of the app could not be fetched. */
export const openDesk = async (settings: SettingsKeeper): Promise<Desk> => {
  const { createDesk } = await import("./wiring")
  const container = workerContainer()
  if (container) void registerWorker(container, quiet)
  return createDesk(settings)
}
