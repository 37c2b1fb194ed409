/**
 * Asks after a worker who is alone, aloud and in the log. The app can flash, sound and offer a message that the worker
 * or a passer-by sends with one tap; it says plainly that it sends nothing by itself.
 */
import { sayNumber } from "../facts/sayNumber"
import { heardFrom, isOverdue, notChecked, passTime, startChecks } from "./loneWorker"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** "twenty minutes"; one is only "minute", to stand behind "every". */
export const sayMinutes = (every: number) => (every === 1 ? "minute" : `${sayNumber(every)} minutes`)

/** Sets the interval that the worker chose, or says how to choose one. */
export const setChecks = (turn: Turn, every: number | undefined): void => {
  if (every === undefined) {
    return turn.say("How often? Your risk assessment decides. Say check on me every, and the minutes.")
  }
  turn.set({ loneWorker: startChecks(every, turn.at) })
  turn.add({ type: "check_in", state: "set", every })
  turn.say(`Every ${sayMinutes(every)} without a word from you, I ask. It is a reminder and no safety device.`)
}

/** Ends the check-ins without a word; tells whether there were any. */
export const endChecks = (turn: Turn): boolean => {
  const { everyMinutes, phase } = turn.state.loneWorker
  if (everyMinutes === null) return false
  turn.set({ loneWorker: notChecked })
  turn.add({ type: "check_in", state: "stopped" })
  if (phase === "alarm") turn.alarm(false)
  return true
}

/** Ends the check-ins at the worker's wish. */
export const stopChecks = (turn: Turn): void =>
  turn.say(endChecks(turn) ? "I no longer ask after you." : "Nobody is being checked on.")

const sound = (turn: Turn): void => {
  turn.add({ type: "check_in", state: "alarm" })
  turn.alarm(true)
  turn.sound("warning")
  turn.say(
    "Get help. A message to your contact is on the screen: one tap sends it. I send nothing by myself.",
    [],
    true,
  )
}

/** The worker was heard or has tapped: a standing question is answered, and the interval starts again. */
export const showLife = (turn: Turn): void => {
  const { loneWorker } = turn.state
  if (loneWorker.everyMinutes === null) return
  if (isOverdue(loneWorker)) turn.add({ type: "check_in", state: "answered" })
  if (loneWorker.phase === "alarm") {
    turn.alarm(false)
    turn.say("The alarm is off.")
  }
  turn.set({ loneWorker: heardFrom(loneWorker, turn.at) })
}

/** What is said to an answer that was nothing but an answer. */
export const thankForAnswer = (turn: Turn): void => {
  const { everyMinutes } = turn.state.loneWorker
  turn.sound("gotIt")
  turn.say(everyMinutes === null ? "Thank you." : `Thank you. I ask again in ${sayMinutes(everyMinutes)}.`)
  if (turn.state.question) turn.say(turn.state.question.words)
  else askWaiting(turn)
}

/** "No" to the question is a call for help: nothing is waited for. */
export const callForHelp = (turn: Turn): void => {
  turn.set({ loneWorker: { ...turn.state.loneWorker, phase: "alarm", until: null } })
  sound(turn)
}

/** Time has passed: the question, the question again, or the alarm, when one of them is due. */
export const askAfter = (turn: Turn): void => {
  const passed = passTime(turn.state.loneWorker, turn.at)
  turn.set({ loneWorker: passed.worker })
  if (passed.turn === "ask") {
    turn.add({ type: "check_in", state: "asked" })
    turn.sound("listening")
    turn.say("Check in. Are you well?")
  }
  if (passed.turn === "ask_again") {
    turn.add({ type: "check_in", state: "missed" })
    turn.sound("warning")
    turn.say("Check in. Are you well? Answer me, or touch the screen.", [], true)
  }
  if (passed.turn === "alarm") sound(turn)
}
