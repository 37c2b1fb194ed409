/**
 * The bare name of a part while something waits for an answer. A short yes came out as "gas" with a margin of 1.1 in noise,
 * and "two two metres" as "water" with 1, so nothing is taken up for it; the name in a longer sentence is.
 */
import type { Heard } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import { sayItem } from "../interpret/sayItem"
import { capital } from "./capital"
import type { DialogueState } from "./DialogueState"
import { isUncertain } from "./needsYes"
import { askWaiting } from "./speak"
import { slotNamed } from "./spelling"
import type { Turn } from "./Turn"

const isLonger = /^go to |bond$/

/** Whether it may as well have been the answer that is awaited. */
export const isStrayPart = (
  { question, doubt, spelled, readBack }: DialogueState,
  { facts, ask, command }: Interpretation,
  heard: Heard,
): boolean => {
  // A value that came in doubt or wrong is asked for once more; a plain question for the next one may be left for a part.
  const isOfValue = question?.item != null && (doubt !== null || spelled === slotNamed(question.kind, question.item))
  const isAwaited = question ? question.candidates.length === 1 || isOfValue : readBack?.needsYes === true
  const isPart = facts.length === 1 && facts[0]!.kind === "service" && !ask && !command
  return isAwaited && isPart && isUncertain(heard) && !isLonger.test(heard.text)
}

/** Puts what waits once more. The words do not hold the answer that would take up the part. */
export const askWhether = (turn: Turn, { facts }: Interpretation): void => {
  const [part] = facts
  const { question } = turn.state
  if (part?.kind !== "service") return
  turn.sound("sayAgain")
  turn.say(`${capital(sayItem(part.value))}? To go there, say go to, and its name.`)
  if (question) turn.say(question.words)
  else askWaiting(turn, "Still open.")
}
