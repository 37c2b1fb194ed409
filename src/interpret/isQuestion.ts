/** Whether a claim was asked and not said; a question that the same breath answers with yes was said. */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { bitsOf } from "./GrammarBits"
import { isAnswered, opensQuestion } from "./marksOfDoubt"
import type { Island, Utterance } from "./Utterance"

const commands = bitsOf("commands")
/** Wishes to be told something: what they hold is what is asked about. */
const asking = /^commands\.(whatsLeft|whatSize|whatShouldItRead|howLong|whatDidISay|whatsNext)$/

/** `talk` are the phrases of the utterance that can take something back. */
export function isQuestion(claim: Claim, utterance: Utterance, clauses: Clauses, talk: readonly Island[]): boolean {
  const { sentence, questions } = clauses
  const isMarked =
    questions.has(sentence[claim.from]!) ||
    ((utterance.grammars & commands) !== 0 &&
      utterance.islands.some((one) => asking.test(one.rule) && sentence[one.from] === sentence[claim.from])) ||
    talk.some((one) => asks(one, utterance) && sentence[one.from] === sentence[claim.from])
  return isMarked && !isAnswered(claim, utterance)
}

/** "what are bond": the water, as engines write it. */
const isMisheardPart = ({ from }: Island, { words }: Utterance): boolean =>
  /^what (are|a|her) (bond|bonding|pipe|main)\b/.test(words.slice(from, from + 3).join(" "))

const asks = (island: Island, utterance: Utterance): boolean =>
  !isMisheardPart(island, utterance) &&
  (/^guards\.(question|wonder)$/.test(island.rule) ||
    (island.rule === "answers.repeat" && opensQuestion(island, utterance)))
