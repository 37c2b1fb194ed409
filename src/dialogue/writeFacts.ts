/**
 * Facts into entries. A value without a part to belong to is not written anywhere: it waits, and the loop asks. A part
 * that is named becomes the current one.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import type { Item } from "../facts/Item"
import { heldFact, heldIn, lastIn } from "../record/holding"
import type { Draft, Origin } from "../record/LogLine"
import { applyLine } from "../record/project"
import { itemOf, slotOf } from "../record/slotOf"
import { stampLine } from "../record/stampLine"
import { toSituation } from "../record/toSituation"
import { isWarning } from "../record/warningKey"
import { keepHomeless } from "./homeless"
import { isUncertain, needsYes } from "./needsYes"
import { sayFacts } from "./sayFacts"
import type { Turn } from "./Turn"
import { withdraw } from "./withdraw"
import { withSubject } from "./withSubject"

/** Whether the value sets off a warning of its own, which the worker then has to answer. `id` is what it will be kept under. */
const wouldWarn = (turn: Turn, draft: Draft, id: string): boolean => {
  const { record, job, device, by } = turn.state
  const line = stampLine(draft, { id, job: job ?? "", at: turn.at, by, device, seq: record.nextSeq })
  const { findings } = turn.tools.check(toSituation(applyLine(record, line)))
  return findings.some((finding) => isWarning(finding) && finding.rests.includes(id))
}

/** "No gas here" after something was said of the gas: one of the two was misheard. */
const gainsays = (turn: Turn, fact: RecordedFact): boolean =>
  fact.kind === "survey" &&
  fact.value === "not_here" &&
  turn.state.record.entries.some(
    (held) => held.item === fact.subject && held.withdrawn === null && !["service", "survey"].includes(held.fact.kind),
  )

/** The very value that was said no to last, come again out of an ear that can be in doubt. */
const wasDenied = (turn: Turn, fact: RecordedFact, heard: Heard | null): boolean => {
  if (heard?.margin == null) return false
  const last = lastIn(turn.state.record, slotOf(fact, ""))
  return last?.withdrawn === "denied" && last.fact.value === fact.value
}

/** That somebody works live is no value to be confirmed: its stop is answered by making it dead. */
const isLiveWork = (fact: RecordedFact) => fact.kind === "step_done" && fact.value === "working_live"

/**
 * A value of a part that was said not to be here: the part is here after all, so the survey is taken back, aloud. Left
 * standing, it would keep that part out of everything that is still to do.
 */
const takeBackAbsence = (turn: Turn, fact: RecordedFact): boolean => {
  const item = itemOf(fact)
  const absence = item === null ? undefined : heldFact(turn.state.record, item, "survey")
  if (absence?.fact.value !== "not_here" || ["survey", "service", "note", "time"].includes(fact.kind)) return false
  withdraw(turn, [absence.entry], "denied")
  turn.say(`Taken back. ${sayFacts([absence.fact])}`)
  return true
}

/** A "no" or a step, said of something else, came out as an arrangement; one that nobody asked for waits for its yes. */
const isStrayArrangement = (turn: Turn, fact: RecordedFact, heard: Heard | null): boolean => {
  const { question, readBack, item } = turn.before
  const isTopic = question?.kind === "earthing_arrangement" || (item === null && readBack === null)
  return fact.kind === "earthing_arrangement" && !isTopic && isUncertain(heard)
}

/** Whether it was asked for digit by digit: what it was taken for before was wrong. */
const isSpelled = (turn: Turn, fact: RecordedFact, heard: Heard | null): boolean =>
  heard?.margin != null && turn.before.spelled === slotOf(fact, "")

const writeOne = (turn: Turn, fact: RecordedFact, origin: Origin, heard: Heard | null): void => {
  const isHereAfterAll = takeBackAbsence(turn, fact)
  const replaced = heldIn(turn.state.record, slotOf(fact, ""))
  const draft = {
    type: "entry",
    fact,
    origin,
    needsYes: needsYes(fact, heard),
    ...(replaced && { replaces: replaced.entry }),
  } as const
  const entry = turn.tools.newId()
  const isOdd =
    isHereAfterAll ||
    turn.mustBeAnswered ||
    gainsays(turn, fact) ||
    wasDenied(turn, fact, heard) ||
    isSpelled(turn, fact, heard) ||
    isStrayArrangement(turn, fact, heard)
  const mustAnswer = draft.needsYes || isOdd || (!isLiveWork(fact) && wouldWarn(turn, draft, entry))
  turn.add({ ...draft, needsYes: mustAnswer }, entry)
  turn.written.push(entry)
  if (origin.by === "hand") turn.add({ type: "accepted", entry, how: "tapped" })
}

/** Takes up a part: puts it on the record where it is new, and makes it the current one. */
const takeUp = (turn: Turn, item: Item, origin: Origin, heard: Heard | null): void => {
  if (!turn.state.record.items.includes(item)) writeOne(turn, { kind: "service", value: item }, origin, heard)
  turn.set({ item })
}

/** Writes what can be written and keeps the rest waiting for a part. */
export const writeFacts = (turn: Turn, facts: readonly RecordedFact[], origin: Origin, heard: Heard | null): void => {
  for (const fact of facts) if (fact.kind === "service") takeUp(turn, fact.value, origin, heard)
  const values = facts.filter((fact) => fact.kind !== "service")
  const placed = values.map((fact) => withSubject(fact, turn.state.item))
  for (const fact of placed) {
    const item = itemOf(fact)
    if (item === null) continue
    writeOne(turn, fact, origin, heard)
    if (item !== "supply" && item !== "test_leads" && item !== "job" && item !== "met") turn.set({ item })
  }
  // A part that wants no bond is not the one that the next values are about.
  const isClosed = placed.some((fact) => fact.kind === "survey" && fact.value !== "needs_bond")
  if (isClosed) turn.set({ item: turn.before.item })
  const homeless = placed.filter((fact) => itemOf(fact) === null)
  const from = origin.by === "voice" ? origin.heard : []
  if (homeless.length > 0) keepHomeless(turn, homeless, from)
}
