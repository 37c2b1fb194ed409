/** Leaves the job for another time. Check-ins end with it: a job that is put away hears nothing. */
import { stopChecks } from "./checkIns"
import type { Turn } from "./Turn"

export const putAway = (turn: Turn): void => {
  if (turn.state.loneWorker.everyMinutes !== null) stopChecks(turn)
  turn.say("Put away. It is kept on this device.")
  turn.leave()
}
