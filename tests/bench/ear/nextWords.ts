/**
 * What a worker says next who listens to every read-back: yes where it is right, no or the right value where it is not,
 * the same again where nothing came back. He acts only on what was said aloud in the last turn.
 */
import type { DialogueState } from "../../../src/dialogue/DialogueState"
import type { RecordedFact } from "../../../src/facts/Fact"
import { itemOf } from "../../../src/record/slotOf"
import { yeses } from "../../../src/speech/rivals"
import type { PartOfJob, SpokenEntry } from "./entriesOfJob"

export interface LastTurn {
  said: string
  /** What came back: words, or only a sound, or nothing at all. */
  words: readonly string[]
  gotIt: boolean
}

/** Words to say, or null once he believes that the entry is down. */
export const nextWords = (state: DialogueState, last: LastTurn, part: PartOfJob, entry: SpokenEntry): string | null => {
  const silent = last.words.length === 0 && !last.gotIt
  if (silent || last.words.join().startsWith("Say that again")) return otherwise(last.said)
  if (state.readBack) return afterReadBack(state, last, part, entry)
  if (state.question) return afterQuestion(state, part, entry)
  if (yeses.includes(last.said) && last.gotIt) return null
  return entry.full
}

/** Ways of saying yes and no, each with the next to try. */
const inMoreWords: Readonly<Record<string, string>> = {
  yes: "yes that's right",
  "yes that's right": "affirmative",
  affirmative: "yes that's right",
  no: "no that's wrong",
  "no that's wrong": "negative",
  negative: "no that's wrong",
}

/** Who is not understood says it in other words where there are any: nought and zero, or a yes in more words. */
const otherwise = (said: string): string => {
  const longer = inMoreWords[said]
  if (longer) return longer
  return said.includes("nought") ? said.replaceAll("nought", "zero") : said.replaceAll("zero", "nought")
}

const afterReadBack = (state: DialogueState, last: LastTurn, part: PartOfJob, entry: SpokenEntry) => {
  const back = state.readBack!
  const facts = back.entries.flatMap((id) => state.record.entries.find((held) => held.entry === id)?.fact ?? [])
  const wrong = facts.filter((fact) => !isMeant(fact, part))
  const repairable =
    wrong.length === 1 && facts.filter((fact) => fact.kind !== "service").length === 1 ? wrong[0]! : null
  if (repairable?.kind === entry.fact.kind && itemOf(repairable) === part.item && last.said !== entry.repair)
    return entry.repair
  if (wrong.length > 0) return "no"
  // Another reading may still have waited; a yes is about that one.
  const isThis = facts.some((fact) => isSame(fact, entry.fact))
  if (!isThis) return back.needsYes ? "yes" : entry.full
  return back.needsYes ? "yes" : null
}

const afterQuestion = (state: DialogueState, part: PartOfJob, entry: SpokenEntry) => {
  const { kind, item, candidates } = state.question!
  if (kind === "service") return part.name
  if (candidates.length === 1) return isMeant(candidates[0]!, part) ? "yes" : "no"
  if (kind === entry.fact.kind && item === part.item) return entry.bare
  return entry.full
}

export const isSame = (fact: RecordedFact, other: RecordedFact) =>
  fact.kind === other.kind && fact.value === other.value && itemOf(fact) === itemOf(other) && qualifierOf(fact) === null

const qualifierOf = (fact: RecordedFact) => ("qualifier" in fact && fact.qualifier) || null

/** Whether the worker ever meant this on the job. */
export const isMeant = (fact: RecordedFact, part: PartOfJob) =>
  fact.kind === "service" ? fact.value === part.item : part.entries.some((entry) => isSame(fact, entry.fact))
