/**
 * Ends a job at the worker's word. An open stop refuses, unless it was kept with a reason; what is not done is said and
 * goes into the record beside the signature. It never says that the installation is safe.
 */
import { sayNumber } from "../facts/sayNumber"
import { awaitingYes } from "../record/holding"
import { signedFindings } from "../record/signedFindings"
import { isKept } from "../record/warningKey"
import { readyToSign } from "../rules/readyToSign"
import { capital } from "./capital"
import { askForPart } from "./homeless"
import { askOwn } from "./ownQuestion"
import { whatsLeft } from "./plan"
import { sayMoreItems, sayOpenWarnings } from "./sayCounts"
import { sayAllWanted } from "./sayWanted"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"

/** Items named aloud before signing, and things named of each; the record holds them all. */
const mostItems = 3
const mostThings = 2

const readinessOf = (turn: Turn) => readyToSign(turn.state.checked, (finding) => isKept(turn.state.record, finding))

/** Refuses with the stops, one sentence each. */
const refused = (turn: Turn): boolean => {
  const { stops } = readinessOf(turn)
  if (stops.length === 0) return false
  turn.say(`Not yet. ${stops.length === 1 ? "A stop is" : `${capital(sayNumber(stops.length))} stops are`} open.`)
  for (const stop of stops.slice(0, mostItems)) turn.say(stop.spoken)
  turn.say("Put it right, or keep it with a reason.")
  return true
}

/** What is left open, each in a sentence of its own: warnings first, then what is not done. */
const openPoints = (turn: Turn, most: number): { warned: string[]; left: string[] } => {
  const { warns } = readinessOf(turn)
  return {
    warned: sayOpenWarnings(warns.length),
    left: whatsLeft(turn.state.record, turn.plan).map((one) => sayAllWanted(one.item, one.wanted, most)),
  }
}

export const askSignOff = (turn: Turn): void => {
  if (turn.state.record.signedOff) return turn.say("It is signed off already, and nothing was changed after that.")
  if (refused(turn)) return
  if (turn.state.homeless) {
    turn.say("Not yet. First this.")
    return askForPart(turn)
  }
  if (awaitingYes(turn.state.record).length > 0) return askWaiting(turn, "Not yet. First this.")
  const { warned, left } = openPoints(turn, mostThings)
  const notDone = left.length > 0 ? ["Not done.", ...left.slice(0, mostItems)] : []
  const open = [...warned, ...notDone, ...sayMoreItems(left.length, mostItems)]
  askOwn(
    turn,
    "sign_off",
    [...(open.length > 0 ? open : ["Nothing is left."]), "Do you put your name to it?"].join(" "),
  )
}

export const signOff = (turn: Turn): void => {
  turn.set({ question: null, doubt: null })
  if (refused(turn)) return
  const { record, checked, by } = turn.state
  const { warned, left } = openPoints(turn, Number.POSITIVE_INFINITY)
  turn.add({
    type: "signed_off",
    role: by,
    undone: [...warned, ...left],
    findings: signedFindings(record, checked.findings),
  })
  turn.sound("gotIt")
  turn.say("Signed off by you. Any change opens it again.")
}
