/** Questions that outlive a sentence which was not their answer: after a note, and after a part was named for them. */
import type { RecordedFact } from "../facts/Fact"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { capital } from "./capital"
import type { DialogueState, Interrupted } from "./DialogueState"
import { isUncertain } from "./needsYes"
import { ownQuestion } from "./ownQuestion"
import { askWaiting } from "./speak"
import type { Turn } from "./Turn"
import { withSubject } from "./withSubject"

/** A note is an aside: the question that stood, or the value that waited for a yes, is put again after it. */
export const askAgain = (turn: Turn, { question, doubt, readBack }: DialogueState): void => {
  if (question && !ownQuestion(question.kind)) {
    turn.set({ question, doubt })
    turn.say(question.words)
  } else if (readBack?.needsYes) askWaiting(turn, "Still open.")
}

/** What was heard in place of an answer and waits for a yes: where it is denied, the question is put again. */
export const keepInterrupted = (turn: Turn, facts: readonly RecordedFact[], asked: Interrupted): void => {
  const { readBack } = turn.state
  const { question } = asked
  if (!question || !readBack?.needsYes || !isUncertain(turn.heard)) return
  if (facts.some((fact) => fact.kind === question.kind)) return
  turn.set({ readBack: { ...readBack, interrupted: asked } })
}

/** Puts it again; false where none was interrupted. */
export const takeUpAgain = (turn: Turn, asked: Interrupted | undefined): boolean => {
  if (!asked?.question) return false
  turn.set(asked)
  turn.say(asked.question.words)
  return true
}

/**
 * A value in doubt that is neither answered nor asked about any more: what is written next closes its question. Empty
 * where nothing is dropped.
 */
export const sayDropped = ({ question, doubt }: DialogueState, facts: readonly RecordedFact[]): string => {
  const isValue = question?.candidates.some((one) => "unit" in one || one.kind === "earthing_arrangement")
  if (!question || !doubt || !isValue || facts.some((fact) => fact.kind === question.kind)) return ""
  const name = question.item && question.item !== "supply" ? `${capital(sayItem(question.item))}: ` : ""
  return capital(`${name}no ${sayKind(question.kind)} taken down.`)
}

/** A part that is named in answer to a doubt without one: the doubt stays open, now of that part. */
export const isWhereOf = ({ question, doubt }: DialogueState, facts: readonly RecordedFact[]): boolean =>
  doubt !== null &&
  question !== null &&
  question.item === null &&
  question.kind !== "service" &&
  facts.length > 0 &&
  facts.every((fact) => fact.kind === "service")

/** The same doubt again, with the name of the part. */
export const askOfPart = (turn: Turn, { question, doubt }: DialogueState): void => {
  const { item } = turn.state
  if (!question || !item) return
  const words = `${capital(sayItem(item))}. ${question.words}`
  const candidates = question.candidates.map((one) => withSubject(one, item))
  turn.say(words)
  turn.set({ question: { ...question, item, words, candidates }, doubt })
}
