/**
 * What is said after something was written: warnings first, then the rest read back, then what still waits for a yes.
 */
import type { RecordedFact } from "../facts/Fact"
import { isBond } from "../facts/Item"
import { awaitingYes } from "../record/holding"
import { cautionsFor } from "./cautions"
import type { ReadBack } from "./DialogueState"
import { hintAfterReadings } from "./hints"
import { askForPart } from "./homeless"
import { sayFacts, withoutSubject } from "./sayFacts"
import { entriesOf, freshWarnings, isReadByWarning, sayWarnings } from "./sayWarnings"
import { settle } from "./settle"
import type { Turn } from "./Turn"

/** Ends every read-back that has to be answered. It does not hold the word that confirms it. */
export const answerMe = "Is that it?"

const factsOf = (turn: Turn, entries: readonly string[]): RecordedFact[] =>
  entries.flatMap((entry) => turn.fact(entry) ?? [])

/**
 * Reads back one older entry that still waits, so that no value is forgotten half accepted. Never in the breath of
 * another read-back: the answer could mean either. `except` names entries that are being asked about otherwise.
 */
export const askWaiting = (turn: Turn, lead = "And still open.", except: readonly string[] = []): void => {
  const { question, homeless } = turn.state
  if (homeless) return askForPart(turn)
  // A value in doubt that was asked about is not dropped for one that can wait.
  if (question && turn.state.doubt) return turn.say(question.words)
  const waiting = awaitingYes(turn.state.record).filter(
    ({ entry }) => !turn.written.includes(entry) && !except.includes(entry),
  )
  const together = waiting.filter((held) => held.item === waiting[0]?.item)
  const last = together.at(-1)
  if (!last) return
  turn.say(`${lead} ${sayFacts(together.map((held) => held.fact))} ${answerMe}`)
  const entries = together.map((held) => held.entry)
  settle(turn)
  turn.set({ readBack: { entries, main: last.entry, needsYes: true }, question: null })
}

/** Says the cautions that these entries make due. */
export const sayCautions = (turn: Turn, entries: readonly string[]): void => {
  for (const caution of cautionsFor(turn.state.record, factsOf(turn, entries))) turn.say(caution)
}

/**
 * What of the entries is said, and what is left to the sound. What waits for a yes is always said whole, and so is the
 * name of a part that is not the one talked about before: a value under the wrong part must never pass in silence.
 */
const factsAloud = (turn: Turn, entries: readonly string[]): RecordedFact[] => {
  const { verbosity } = turn.state.preferences
  const held = turn.state.record.entries.filter((one) => entries.includes(one.entry))
  const facts = held.map((one) => one.fact)
  const isWeighty = held.some((one) => one.needsYes || one.fact.kind === "survey")
  if (verbosity === "full" || turn.isRepair || isWeighty) return facts
  const moved = held.find((one) => one.item !== null && isBond(one.item) && one.item !== turn.before.item)?.item
  const name: RecordedFact[] = moved && moved !== "job" ? [{ kind: "service", value: moved }] : []
  if (verbosity === "warnings") return name
  const values = facts.filter((fact) => fact.kind !== "step_done" && fact.kind !== "service")
  return [...name, ...values.map(withoutSubject)]
}

const readBackOf = (entries: readonly string[]): ReadBack | null => {
  const main = entries.at(-1)
  return main === undefined ? null : { entries, main, needsYes: true }
}

/** Checks what was written in this turn, warns, and reads it back. */
export const speakWritten = (turn: Turn): void => {
  turn.check()
  const { written } = turn
  const record = turn.state.record
  const fresh = freshWarnings(turn)
  sayWarnings(turn, fresh)
  const waiting = awaitingYes(record).filter((held) => written.includes(held.entry))
  const warned = new Set(
    record.entries
      .filter((held) => written.includes(held.entry) && isReadByWarning(fresh, held))
      .map((one) => one.entry),
  )
  // The question for its limit names an over-range reading, so that nothing is asked twice in one breath.
  const isAskedNext = (entry: string) => turn.isDoubted && turn.fact(entry)?.value === null
  const plain = written.filter((entry) => !warned.has(entry) && !isAskedNext(entry))
  const asks = waiting.some((held) => plain.includes(held.entry))
  // A warning names its part, so a part that came with a warned value is not said again.
  const isNews = fresh.length === 0 || plain.some((entry) => turn.fact(entry)?.kind !== "service")
  if (turn.aside) turn.say(turn.aside)
  const aloud = factsAloud(turn, plain).filter((fact) => !turn.isDoubted || fact.kind !== "service")
  if (aloud.length > 0 && isNews) turn.say(`${sayFacts(aloud)}${asks ? ` ${answerMe}` : ""}`)
  sayCautions(turn, written)
  hintAfterReadings(turn, factsOf(turn, written))
  turn.challengeable.push(...written)
  const main = waiting.at(-1)?.entry ?? written.at(-1)
  const entries = [...turn.challengeable]
  if (main) turn.set({ readBack: { entries, main, needsYes: waiting.length > 0 }, question: null })
  else if (fresh.length > 0) turn.set({ readBack: readBackOf(entriesOf(turn, fresh.at(-1)!)) })
  if (fresh.length === 0) turn.sound("gotIt")
}
