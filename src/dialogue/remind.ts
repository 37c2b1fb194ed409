/** Reminders in silence. Each says what the next answer is about, so that a yes can never meet an older read-back. */
import type { Finding } from "../facts/Finding"
import { isOverdue } from "./loneWorker"
import { entriesOf } from "./sayWarnings"
import { settle } from "./settle"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"
import { unansweredWarnings, waitsBeside } from "./unanswered"

/** How often the worker is reminded, in silence, before what waits is left to the screen and to "what's left". */
export const mostReminders = 3

/** A warning again, and with it what an answer is now about: the open question, else the warning itself. */
const warnAgain = (turn: Turn, warning: Finding): void => {
  turn.sound("warning")
  turn.say(`Warning again. ${warning.spoken}`)
  if (turn.state.question) return turn.say(turn.state.question.words)
  const entries = entriesOf(turn, warning)
  settle(turn)
  const main = entries.at(-1)
  if (main) turn.set({ readBack: { entries, main, needsYes: true } })
}

/** In silence, by turns: a warning that nobody answered, and what still waits for a yes or a part. */
export const remind = (turn: Turn): void => {
  const { reminders } = turn.state
  if (reminders >= mostReminders || !turn.state.listening || isOverdue(turn.state.loneWorker)) return
  const warning = unansweredWarnings(turn.state)[0]
  if (warning && (reminders % 2 === 0 || !waitsBeside(turn.state, warning))) warnAgain(turn, warning)
  else askWaiting(turn, undefined, warning?.rests)
  turn.set({ reminders: reminders + 1 })
}
