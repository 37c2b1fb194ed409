/** The part of the address after `#`, drawn again whenever it changes: it names the screen, so reload and back keep to it. */
import { useSyncExternalStore } from "react"

const subscribe = (changed: () => void) => {
  window.addEventListener("hashchange", changed)
  return () => window.removeEventListener("hashchange", changed)
}

/** "#record", or nothing. */
export const useHash = (): string => useSyncExternalStore(subscribe, () => window.location.hash)
