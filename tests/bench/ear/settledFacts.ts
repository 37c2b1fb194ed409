/** What a job's record would hold if the worker now walked on: all that stands, save what still waits for a yes. */
import type { DialogueState } from "../../../src/dialogue/DialogueState"
import type { RecordedFact } from "../../../src/facts/Fact"
import { allHeld } from "../../../src/record/holding"

export const settledFacts = ({ record }: DialogueState): RecordedFact[] =>
  allHeld(record)
    .filter((held) => held.accepted !== null || !held.needsYes)
    .map((held) => held.fact)
