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

/** What the app has told him, and he keeps to from then on. */
export interface Habits {
  /** He answers in more words than a yes or a no. */
  inMoreWords: boolean
  /** He says "zero" in readings. */
  saysZero: boolean
  /** What he was asked for digit by digit, and goes on to say so. */
  spells: SpokenEntry | null
  /** What he said yes to and heard the sound for: whatever is asked after that, this is down. */
  down: SpokenEntry | null
}

export const newHabits = (): Habits => ({ inMoreWords: false, saysZero: false, spells: null, down: null })

/** Words to say, or null once he believes that the entry is down. What he was told changes his habits. */
export const nextWords = (moment: Moment): string | null => {
  const { last, habits } = moment
  const heard = last.words.join(" ")
  habits.inMoreWords ||= heard.includes("Best say yes")
  habits.saysZero ||= heard.includes("Say zero for nought")
  if (isInDigits(heard)) habits.spells = moment.entry
  const isOfThis = moment.state.record.entries.some((held) => held.accepted && isSame(held.fact, moment.entry.fact))
  if (yeses.includes(last.said) && last.gotIt && isOfThis) habits.down = moment.entry
  const words = answerTo(moment)
  return words === null ? null : inHabit(words, habits, moment.entry)
}

export interface Moment {
  state: DialogueState
  last: LastTurn
  part: PartOfJob
  entry: SpokenEntry
  habits: Habits
}

/** The words as he says them by now. */
export const inHabit = (words: string, habits: Habits, entry: SpokenEntry): string => {
  const isShort = words === "yes" || words === "no"
  if (habits.inMoreWords && isShort) return inMoreWords[words]!
  if (habits.spells === entry && words === entry.repair) return `make that ${byDigits(entry)}`
  return habits.saysZero && entry.fact.kind === "resistance" ? words.replaceAll("nought", "zero") : words
}

const answerTo = (moment: Moment): string | null => {
  const { state, last, part, entry, habits } = moment
  const isDown = habits.down === entry
  const silent = last.words.length === 0 && !last.gotIt
  const isNotTaken = /^Say that again|To go there, say go to/.test(last.words.join(" "))
  if (silent || isNotTaken) return otherwise(last.said)
  if (state.question) return isDown ? null : afterQuestion(state, part, entry)
  if (state.readBack) return afterReadBack(moment, isDown)
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

const afterReadBack = ({ state, last, part, entry }: Moment, isDown: boolean) => {
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
  // What he has not said yet he does not say yes to, however true it will be.
  const isToCome = (fact: RecordedFact) =>
    part.entries.slice(part.entries.indexOf(entry) + 1).some((one) => isSame(fact, one.fact))
  if (facts.some(isToCome)) return "no"
  if (!isThis) return back.needsYes ? "yes" : isDown ? null : entry.full
  return back.needsYes ? "yes" : null
}

const digitWords = ["oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]

/** "nineteen metres" as "one nine metres"; the value as it is where it is no whole number. */
const byDigits = ({ fact, bare }: SpokenEntry): string => {
  const unit = { length: " metres", distance: " mil" }[fact.kind as string]
  if (unit === undefined || !Number.isInteger(fact.value)) return bare
  return [...String(fact.value)].map((digit) => digitWords[Number(digit)]).join(" ") + unit
}

/** Whether the app asked for digits, or offered two values in digits. */
const isInDigits = (words: string): boolean => {
  if (words.includes("digit by digit")) return true
  const [, first] = /Was that ([a-z ]+), or /.exec(words) ?? []
  return first?.split(" ").every((word) => digitWords.includes(word)) === true
}

const afterQuestion = (state: DialogueState, part: PartOfJob, entry: SpokenEntry) => {
  const { kind, item, candidates, words } = state.question!
  if (kind === "service") return part.name
  if (candidates.length === 1) return isMeant(candidates[0]!, part) ? "yes" : "no"
  if (kind === entry.fact.kind && item === part.item) return isInDigits(words) ? byDigits(entry) : entry.bare
  return entry.full
}

export const isSame = (fact: RecordedFact, other: RecordedFact) =>
  fact.kind === other.kind && fact.value === other.value && itemOf(fact) === itemOf(other) && qualifierOf(fact) === null

const qualifierOf = (fact: RecordedFact) => ("qualifier" in fact && fact.qualifier) || null

/** Whether the worker ever meant this on the job. */
export const isMeant = (fact: RecordedFact, part: PartOfJob) =>
  fact.kind === "service" ? fact.value === part.item : part.entries.some((entry) => isSame(fact, entry.fact))
