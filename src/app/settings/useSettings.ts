/** The settings, drawn again whenever they change. */
import { useSyncExternalStore } from "react"
import type { Settings } from "./Settings"
import type { SettingsKeeper } from "./SettingsKeeper"

export const useSettings = (keeper: SettingsKeeper): Settings =>
  useSyncExternalStore(keeper.subscribe, keeper.snapshot, keeper.snapshot)
