/**
 * What an ear made of words that the worker then said no to. Said once more, the same sound would come out as the same
 * words; the ear is told of them, so that it looks for what else it may have been.
 */
import { type Heard, sureMargin } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import { sayItem } from "../interpret/sayItem"
import type { Turn } from "./Turn"

/** So many of them are kept. */
const most = 6

const holdsValue = ({ facts, ask }: Interpretation): boolean =>
  ask !== null || facts.some((fact) => !["confirm", "deny", "undo", "repeat", "skip"].includes(fact.kind))

/** To be called when all else of the turn is done. */
export const noteMisheard = (turn: Turn, heard: Heard, reading: Interpretation): void => {
  const { before, lines, state } = turn
  if (heard.margin === null) return
  const isWithdrawn = lines.some((line) => line.type === "withdrawn" && line.because === "denied")
  const isDenied = isWithdrawn || state.refused.length > before.refused.length
  const isAgreed = lines.some((line) => line.type === "accepted" && line.how !== "not_challenged")
  const isPlain = lines.some((line) => line.type === "entry") && state.readBack?.needsYes === false
  // The same value again, as a repair of itself, was not meant either; nor what left nothing to put forward.
  const isNone = state.question?.candidates.length === 0 && reading.facts.length === 0 && heard.margin < sureMargin
  const isWrong = holdsValue(reading) && (reading.ask?.isSameAgain === true || (reading.ask !== null && isNone))
  // The part itself was dropped: nothing is asked of it any more.
  const part = isDenied && before.item !== null && state.item === null ? sayItem(before.item) : null
  const added = [
    ...(part ? [part.replace("structural ", "")] : []),
    ...(isDenied && before.heardAs ? [before.heardAs] : []),
    ...(isWrong ? [heard.text] : []),
  ]
  const misheard = isAgreed || (isPlain && !isDenied) ? [] : [...new Set([...before.misheard, ...added])].slice(-most)
  turn.set({ misheard, heardAs: holdsValue(reading) ? heard.text : before.heardAs })
}
