/** Questions that the loop asks before an act of its own: they are answered by a yes or a no and write no value. */
import type { Item } from "../facts/Item"
import type { Turn } from "./Turn"

const ownQuestions = ["read_on", "sign_off", "start_over"] as const
export type OwnQuestion = (typeof ownQuestions)[number]

/** The kind of a question where it is one of these. */
export const ownQuestion = (kind: string | undefined): OwnQuestion | undefined =>
  ownQuestions.find((own) => own === kind)

/** Asks aloud and keeps the question open. The words must not hold one that answers it. */
export const askOwn = (turn: Turn, kind: OwnQuestion, words: string, item: Item | null = null): void => {
  turn.say(words)
  turn.set({
    question: { kind, item, words, because: "it needs your word", candidates: [], heard: [] },
    readBack: null,
    doubt: null,
  })
}
