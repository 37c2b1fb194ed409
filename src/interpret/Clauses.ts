/**
 * How far a word reaches. A sentence ends at a stop; a clause at a comma or before "but", "so" and the like; a segment
 * also at "and". Negation and plans reach through a clause, conditions and questions through a sentence.
 */
import { isEdgeGap, isSentenceEnd } from "./Token"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

export interface Clauses {
  sentence: readonly number[]
  clause: readonly number[]
  segment: readonly number[]
  /** Sentences that end in a question mark. */
  questions: ReadonlySet<number>
}

/** More words than any utterance has. */
const noughts = new Array<number>(2048).fill(0)
const single: Clauses = { sentence: noughts, clause: noughts, segment: noughts, questions: new Set() }

/** Numbers every token by its sentence, clause and segment. What has one clause only is longer than the utterance. */
export function readClauses(utterance: Utterance): Clauses {
  const { tokens, traits } = utterance
  const isParted = (traits & (trait.breaks | trait.joins)) !== 0 || tokens.some((token) => isEdgeGap(token.after))
  return isParted ? readParts(utterance) : single
}

function readParts(utterance: Utterance): Clauses {
  const sentence: number[] = []
  const clause: number[] = []
  const segment: number[] = []
  const questions = new Set<number>()
  const now = { sentence: 0, clause: 0, segment: 0 }
  let island = 0
  for (let at = 0; at < utterance.tokens.length; at += 1) {
    const token = utterance.tokens[at]!
    const { traits } = utterance.entries[at]!
    while (island < utterance.islands.length && utterance.islands[island]!.to <= at) island += 1
    const isFree = island >= utterance.islands.length || utterance.islands[island]!.from >= at
    if (isFree && (traits & trait.breaks) !== 0) now.clause += 1
    if (isFree && (traits & (trait.joins | trait.breaks)) !== 0) now.segment += 1
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
