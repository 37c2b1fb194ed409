/**
 * A value that came out the same again when the worker was asked which of two it was. Asking a third time would bring
 * nothing new, so it is taken up and has to be answered with a yes like any value in doubt.
 */
import type { Heard } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import { candidatesOf } from "./candidatesOf"
import type { DialogueState } from "./DialogueState"
import { needsYes } from "./needsYes"

/** The reading with its doubt settled where the worker has now said the same twice; else as it is. */
export const saidTwice = ({ question, unheard }: DialogueState, reading: Interpretation, heard: Heard | null) => {
  const { ask, facts, command } = reading
  if (!question || !ask || facts.length > 0 || command || unheard) return reading
  const [again, other] = candidatesOf(ask, question.item)
  const [first, second] = question.candidates
  const isSame = again && other && first && second && again.kind === first.kind && again.value === first.value
  if (!isSame || !needsYes(again, heard)) return reading
  return { facts: [again], ask: null, command: null }
}
