/**
 * Keeps the screen on while the app listens, since a phone that locks its screen takes the microphone away. The browser
 * lets go of it whenever the page is hidden, so it is asked for again on the way back.
 */
import type { Session } from "../Session"

/** Watches the session for as long as the page lives. A refusal costs only the light. */
export const keepAwake = (session: Session): void => {
  if (!("wakeLock" in navigator)) return
  let held: WakeLockSentinel | null = null
  let asking = false

  const look = async () => {
    const { ear } = session.snapshot()
    const wanted = ear.state !== "stopped" && session.settings.snapshot().keepAwake
    if (!wanted) {
      await held?.release().catch(() => undefined)
      held = null
      return
    }
    if (asking || (held && !held.released) || document.visibilityState !== "visible") return
    asking = true
    held = await navigator.wakeLock.request("screen").catch(() => null)
    asking = false
  }

  session.subscribe(() => void look())
  session.settings.subscribe(() => void look())
  document.addEventListener("visibilitychange", () => void look())
}
