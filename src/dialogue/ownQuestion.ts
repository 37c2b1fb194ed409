/** Questions that the loop asks before an act of its own: they are answered by a yes or a no and write no value. */
import type { Item } from "../facts/Item"
import type { Turn } from "./Turn"

export type OwnQuestion = "read_on" | "sign_off" | "start_over"

/** Asks aloud and keeps the question open. The words must not hold one that answers it. */
export const askOwn = (turn: Turn, kind: OwnQuestion, words: string, item: Item | null = null): void => {
  turn.say(words)
  turn.set({
    question: { kind, item, words, because: "it needs your word", candidates: [], heard: [] },
    readBack: null,
    doubt: null,
  })
}
