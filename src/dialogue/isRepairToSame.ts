/**
 * Whether a sentence repairs what was read back to the very same: "make that ninety" after "Ninety metres.".
 * Whatever he said, he did not agree; so the value was misheard once more, and is taken back. Where the
 * same sound may have been another value, that one is put forward instead.
 */
import type { Heard } from "../facts/Heard"
import type { Interpretation } from "../facts/Interpretation"
import type { DialogueState } from "./DialogueState"

export const isRepairToSame = (
  { question, readBack }: DialogueState,
  { facts, ask, command }: Interpretation,
  heard: Heard,
): boolean =>
  ask?.isSameAgain === true &&
  ask.candidates === undefined &&
  heard.margin !== null &&
  facts.length === 0 &&
  command === null &&
  (question !== null || readBack !== null)
