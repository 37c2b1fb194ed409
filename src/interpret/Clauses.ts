/**
 * How far a word reaches. A sentence ends at a stop; a clause at a comma or before "but", "so" and the like; a segment
 * also at "and". Negation and plans reach through a clause, conditions and questions through a sentence.
 */
import { isEdgeGap, isSentenceEnd } from "./Token"
import type { Utterance } from "./Utterance"

const breaks = new Set(["but", "so", "because", "cos", "although", "though"])

export interface Clauses {
  sentence: readonly number[]
  clause: readonly number[]
  segment: readonly number[]
  /** Sentences that end in a question mark. */
  questions: ReadonlySet<number>
}

/** Numbers every token by its sentence, clause and segment. */
export function readClauses(utterance: Utterance): Clauses {
  const sentence: number[] = []
  const clause: number[] = []
  const segment: number[] = []
  const questions = new Set<number>()
  const now = { sentence: 0, clause: 0, segment: 0 }
  let island = 0
  for (let at = 0; at < utterance.tokens.length; at += 1) {
    const token = utterance.tokens[at]!
    const word = utterance.words[at]!
    while (island < utterance.islands.length && utterance.islands[island]!.to <= at) island += 1
    const isFree = island >= utterance.islands.length || utterance.islands[island]!.from >= at
    if (isFree && breaks.has(word)) now.clause += 1
    if (isFree && (word === "and" || breaks.has(word))) now.segment += 1
    sentence.push(now.sentence)
    clause.push(now.clause)
    segment.push(now.segment)
    if (token.after === "question") questions.add(now.sentence)
    if (isEdgeGap(token.after)) {
      now.clause += 1
      now.segment += 1
    }
    if (isSentenceEnd(token.after)) now.sentence += 1
  }
  return { sentence, clause, segment, questions }
}
