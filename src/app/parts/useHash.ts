/** The part of the address after `#`, drawn again whenever it changes. */
import { useSyncExternalStore } from "react"

const subscribe = (changed: () => void) => {
  window.addEventListener("hashchange", changed)
  return () => window.removeEventListener("hashchange", changed)
}

export const useHash = (): string => useSyncExternalStore(subscribe, () => window.location.hash)
