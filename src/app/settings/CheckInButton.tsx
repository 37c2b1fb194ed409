/** Starts and ends the check-ins of the open job by tap, and says when the next one is due. */
import { localNow } from "../localNow"
import { showClock } from "../parts/showMoment"
import type { Session, SessionView } from "../Session"
import type { Settings } from "./Settings"

interface ButtonProps {
  view: SessionView
  session: Session
  settings: Settings
}

/** The time on the wall here; the loop keeps its times in UTC. */
const clockOf = (iso: string) => showClock(localNow(new Date(iso)))

export const CheckInButton = ({ view, session, settings }: ButtonProps) => {
  const { everyMinutes, until } = view.dialogue.loneWorker
  if (everyMinutes === null)
    return (
      <button
        type="button"
        onClick={() =>
          session.send({ type: "tapped", act: { kind: "check_on_me", everyMinutes: settings.checkInMinutes } })
        }
      >
        Check on me every {settings.checkInMinutes} minutes
      </button>
    )
  return (
    <>
      <p role="status">
        Every {everyMinutes} minutes of silence.{until && ` Next at ${clockOf(until)}.`}
      </p>
      <button type="button" onClick={() => session.send({ type: "tapped", act: { kind: "stop_checking" } })}>
        Stop checking on me
      </button>
    </>
  )
}
