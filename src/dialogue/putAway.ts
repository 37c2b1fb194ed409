/** Leaves the job for another time. Check-ins end with it: a job that is put away hears nothing. */
import { stopChecks } from "./checkIns"
import { letGo } from "./homeless"
import type { Turn } from "./Turn"

export const putAway = (turn: Turn): void => {
  if (turn.state.loneWorker.everyMinutes !== null) stopChecks(turn)
  letGo(turn)
  turn.say("Put away. It is kept on this device.")
  turn.leave()
}
