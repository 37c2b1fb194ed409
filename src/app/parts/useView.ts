/** The session's snapshot, drawn again whenever it changes. */
import { useCallback, useSyncExternalStore } from "react"
import type { Session, SessionView } from "../Session"

export const useView = (session: Session): SessionView => {
  const subscribe = useCallback((changed: () => void) => session.subscribe(changed), [session])
  const snapshot = useCallback(() => session.snapshot(), [session])
  return useSyncExternalStore(subscribe, snapshot, snapshot)
}
