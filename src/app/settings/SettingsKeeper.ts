/** Keeps the settings on the device and tells who draws by them. Where the device keeps nothing they hold for the visit. */
import { readSettings, type Settings } from "./Settings"

/** Where settings live; also the name that other windows report a change under. */
export const settingsPlace = "bothhands.settings"

type Place = Pick<Storage, "getItem" | "setItem">

export class SettingsKeeper {
  private readonly listeners = new Set<() => void>()
  private settings: Settings

  constructor(private readonly place: Place | null) {
    this.settings = this.read()
  }

  /** The same object until something changes. */
  snapshot = (): Settings => this.settings

  subscribe = (changed: () => void): (() => void) => {
    this.listeners.add(changed)
    return () => void this.listeners.delete(changed)
  }

  /** Takes a change up at once, and keeps it where it can. */
  change(change: Partial<Settings>): void {
    this.settings = { ...this.settings, ...change }
    try {
      this.place?.setItem(settingsPlace, JSON.stringify(this.settings))
    } catch {
      // Full or forbidden storage costs the worker the setting at the next start and nothing else.
    }
    for (const changed of this.listeners) changed()
  }

  /** Another window has changed them. */
  reread(): void {
    this.settings = this.read()
    for (const changed of this.listeners) changed()
  }

  private read(): Settings {
    try {
      return readSettings(this.place?.getItem(settingsPlace) ?? null)
    } catch {
      return readSettings(null)
    }
  }
}

const localPlace = (): Place | null => {
  try {
    return window.localStorage
  } catch {
    return null
  }
}

/** The settings of this device, kept in step with other windows. */
export const openSettings = (): SettingsKeeper => {
  const keeper = new SettingsKeeper(localPlace())
  window.addEventListener("storage", (event) => {
    if (event.key === null || event.key === settingsPlace) keeper.reread()
  })
  return keeper
}
