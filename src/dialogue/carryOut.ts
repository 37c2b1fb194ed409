/** Carries out a wish. Each is answered aloud; none writes a value. */
import type { Command } from "../facts/Interpretation"
import type { Item } from "../facts/Item"
import type { Situation } from "../facts/Situation"
import { toSituation } from "../record/toSituation"
import { setVerbosity, turnVoice } from "./adjustVoice"
import { setChecks, stopChecks, thankForAnswer } from "./checkIns"
import { sayGasSmell } from "./gasSmell"
import { keepWarning } from "./keepWarning"
import { ownQuestion } from "./ownQuestion"
import { putAway } from "./putAway"
import { readAll, readItem, readOn, stopReading } from "./readAloud"
import { sayExpected, sayLeastSize, sayLongest } from "./sayFigures"
import { sayLeft, sayNext } from "./sayLeft"
import { saveFile, showScreen } from "./showScreen"
import { askSignOff } from "./signOff"
import { askWaiting } from "./speak"
import { askStartOver } from "./startOver"
import type { Turn } from "./Turn"

const forItem = (turn: Turn, subject: Item | undefined, say: (item: Item, situation: Situation) => void): void => {
  const item = subject ?? turn.state.item
  if (!item) return turn.say("Which part? Name it and ask again.")
  say(item, toSituation(turn.state.record))
}

/** Wishes about one item: the one named, else the current one. */
const ofItem = (turn: Turn, command: Command): boolean => {
  const { kind } = command
  const item = "subject" in command ? command.subject : undefined
  if (kind === "what_size") forItem(turn, item, (one, situation) => sayLeastSize(turn, one, situation))
  else if (kind === "what_should_it_read") forItem(turn, item, (one, situation) => sayExpected(turn, one, situation))
  else if (kind === "how_long") forItem(turn, item, (one, situation) => sayLongest(turn, one, situation))
  else if (kind === "what_did_i_say") forItem(turn, item, (one) => readItem(turn, one))
  else if (kind === "start_over") forItem(turn, item, (one) => askStartOver(turn, one))
  else return false
  return true
}

/** A pause in the middle of a question: the question, or what waits for a yes, is put again after it. */
const listen = (turn: Turn, on: boolean): void => {
  const { question, readBack } = turn.state
  turn.set({ listening: on })
  if (!on) {
    if (ownQuestion(question?.kind)) turn.set({ question: null })
    return turn.say("I stopped taking notes. Say start listening when you want me.")
  }
  turn.say("Listening.")
  if (question) turn.say(question.words)
  else if (readBack?.needsYes) askWaiting(turn, "Still open.")
}

/** Carries out one wish. */
export const carryOut = (turn: Turn, command: Command): void => {
  if (ofItem(turn, command)) return
  switch (command.kind) {
    case "whats_left":
      return sayLeft(turn, command.subject)
    case "whats_next":
      return sayNext(turn)
    case "read_all_back":
      return readAll(turn)
    case "read_on":
      return readOn(turn)
    case "stop_reading":
      return stopReading(turn)
    case "keep_it":
      return keepWarning(turn, command.reason)
    case "louder":
    case "quieter":
    case "slower":
    case "faster":
      return turnVoice(turn, command.kind)
    case "verbosity":
      return setVerbosity(turn, command.value)
    case "check_on_me":
      return setChecks(turn, command.everyMinutes)
    case "stop_checking":
      return stopChecks(turn)
    case "all_right":
      return thankForAnswer(turn)
    case "smells_gas":
      return sayGasSmell(turn)
    case "sign_off":
      return askSignOff(turn)
    case "put_away":
      return putAway(turn)
    case "show":
      return showScreen(turn, command.screen)
    case "save":
      return saveFile(turn, command.what)
    case "stop_listening":
    case "start_listening":
      return listen(turn, command.kind === "start_listening")
  }
}
