/**
 * A locked screen, a call or another app may stop the ear without telling the page. Everything said before is on disk;
 * what matters is that nobody goes on talking to an ear that is deaf. A running ear tells its level several times a
 * second, so on the way back its silence shows.
 */
import type { Session } from "../Session"

/** A gap this long while the page was away means that the ear slept. */
const sleptMs = 4000
/** So long a healthy ear may take to show itself after the return. */
const graceMs = 2000

export const sleptWords = "I was not listening while you were away. Say it again."
export const stoppedWords = "I stopped listening. Tap Listen, and I go on."

export interface ReturnParts {
  session: Session
  page: Pick<Document, "addEventListener" | "visibilityState">
  now(): number
  later(act: () => void, ms: number): void
}

/** Watches the ear across each time that the page is hidden, for as long as the page lives. */
export const watchReturn = ({ session, page, now, later }: ReturnParts): void => {
  let lastSign = now()
  let longestGap = 0
  let wasOn = false

  session.subscribe(() => {
    longestGap = Math.max(longestGap, now() - lastSign)
    lastSign = now()
  })

  const lookAfterReturn = () => {
    if (!wasOn || page.visibilityState !== "visible") return
    wasOn = false
    if (session.snapshot().ear.state === "stopped") return session.prompt(stoppedWords, true)
    const silent = now() - lastSign >= graceMs
    if (silent) session.listen(true)
    if (silent || longestGap >= sleptMs) session.prompt(sleptWords, true)
  }

  page.addEventListener("visibilitychange", () => {
    if (page.visibilityState === "visible") return later(lookAfterReturn, graceMs)
    const { phase, ear } = session.snapshot()
    wasOn ||= phase === "job" && ear.state !== "stopped"
    longestGap = 0
    lastSign = now()
  })
}
