/**
 * A value that is one of those that the worker was just offered. Asking once more which of them it was would bring nothing
 * new, so it is taken up and has to be answered with a yes like any value in doubt.
 */
import type { Heard } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import { candidatesOf } from "./candidatesOf"
import type { DialogueState } from "./DialogueState"
import { needsYes } from "./needsYes"

/** The reading with its doubt settled where what was offered has now been said again; else as it is. */
export const saidTwice = ({ question, unheard }: DialogueState, reading: Interpretation, heard: Heard | null) => {
  const { ask, facts, command } = reading
  if (!question || !ask || facts.length > 0 || command || unheard) return reading
  const [again, other] = candidatesOf(ask, question.item)
  const offered = question.candidates.length > 1 ? question.candidates : []
  const isOffered = offered.some((one) => one.kind === again?.kind && one.value === again.value)
  if (!again || !other || !isOffered || !needsYes(again, heard)) return reading
  return { facts: [again], ask: null, command: null }
}
