/**
 * What is said after something was written: warnings first, then the rest read back, then what still waits for a yes.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Finding } from "../facts/Finding"
import { isBond } from "../facts/Item"
import { awaitingYes } from "../record/holding"
import { isKept, isWarning, warningKey } from "../record/warningKey"
import { cautionsFor } from "./cautions"
import { sayFacts, withoutSubject } from "./sayFacts"
import type { Turn } from "./Turn"

/** Ends every read-back that has to be answered. It does not hold the word that confirms it. */
export const answerMe = "Is that it?"

/** Warnings that were not spoken before. */
const freshWarnings = (turn: Turn): Finding[] => {
  const { record, checked } = turn.state
  const spoken = new Set(record.warnings.map((one) => one.warning))
  return checked.findings.filter(
    (finding) => isWarning(finding) && !spoken.has(warningKey(finding)) && !isKept(record, finding),
  )
}

/** Said with the first warning of a job only: after that the worker knows it. */
const keepHint = "To leave one as it is, say keep it because, and the reason."

const sayWarnings = (turn: Turn, fresh: readonly Finding[]): void => {
  if (fresh.length === 0) return
  const isFirst = turn.state.record.warnings.length === 0
  turn.sound("warning")
  for (const finding of fresh) turn.say(`Warning. ${finding.spoken}`, [warningKey(finding)])
  if (isFirst) turn.say(keepHint)
}

const factsOf = (turn: Turn, entries: readonly string[]): RecordedFact[] =>
  entries.flatMap((entry) => turn.fact(entry) ?? [])

/**
 * Reads back one older entry that still waits, so that no value is forgotten half accepted. Never in the breath of
 * another read-back: the answer could mean either.
 */
export const askWaiting = (turn: Turn, lead = "And still open."): void => {
  const waiting = awaitingYes(turn.state.record).filter((held) => !turn.written.includes(held.entry))
  const together = waiting.filter((held) => held.item === waiting[0]?.item)
  const last = together.at(-1)
  if (!last) return
  turn.say(`${lead} ${sayFacts(together.map((held) => held.fact))} ${answerMe}`)
  const entries = together.map((held) => held.entry)
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
  const moved = held.find((one) => one.item !== null && isBond(one.item) && one.item !== turn.itemBefore)?.item
  const name: RecordedFact[] = moved && moved !== "job" ? [{ kind: "service", value: moved }] : []
  if (verbosity === "warnings") return name
  const values = facts.filter((fact) => fact.kind !== "step_done" && fact.kind !== "service")
  return [...name, ...values.map(withoutSubject)]
}

/** Checks what was written in this turn, warns, and reads it back. */
export const speakWritten = (turn: Turn): void => {
  turn.check()
  const { written } = turn
  const record = turn.state.record
  const fresh = freshWarnings(turn)
  sayWarnings(turn, fresh)
  const waiting = awaitingYes(record).filter((held) => written.includes(held.entry))
  const warned = new Set(fresh.flatMap((finding) => finding.rests))
  // The question for its limit names an over-range reading, so that nothing is asked twice in one breath.
  const isAskedNext = (entry: string) => turn.isDoubted && turn.fact(entry)?.value === null
  const plain = written.filter((entry) => !warned.has(entry) && !isAskedNext(entry))
  const asks = waiting.some((held) => plain.includes(held.entry))
  // A warning names its part, so a part that came with a warned value is not said again.
  const isNews = fresh.length === 0 || plain.some((entry) => turn.fact(entry)?.kind !== "service")
  const aloud = factsAloud(turn, plain)
  if (aloud.length > 0 && isNews) turn.say(`${sayFacts(aloud)}${asks ? ` ${answerMe}` : ""}`)
  sayCautions(turn, written)
  turn.challengeable.push(...written)
  const main = waiting.at(-1)?.entry ?? written.at(-1)
  const entries = [...turn.challengeable]
  if (main) turn.set({ readBack: { entries, main, needsYes: waiting.length > 0 }, question: null })
  if (fresh.length === 0) turn.sound("gotIt")
}
