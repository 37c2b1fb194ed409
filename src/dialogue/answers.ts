/** Answers to the loop: yes, no, a repair, undo, say again, leave it. */
import { type Answer, type Correct, RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import { unitFor } from "../facts/unitOf"
import { sayItem } from "../interpret/sayItem"
import { heldIn } from "../record/holding"
import type { Held } from "../record/JobRecord"
import type { AcceptedHow, Origin } from "../record/LogLine"
import { slotOf } from "../record/slotOf"
import { askFor } from "./askFor"
import { capital } from "./capital"
import { sayFacts } from "./sayFacts"
import { askWaiting, speakWritten } from "./speak"
import type { Turn } from "./Turn"
import { withSubject } from "./withSubject"
import { writeFacts } from "./writeFacts"

/** Marks every warning that rests on these entries as answered, and tells whether there was one. */
const answerWarnings = (turn: Turn, entries: readonly string[], how: string): boolean => {
  const due = turn.state.record.warnings.filter(
    ({ warning, answered }) =>
      answered === null &&
      warning
        .split("|")
        .slice(2)
        .some((entry) => entries.includes(entry)),
  )
  for (const { warning } of due) turn.add({ type: "answered", warning, how })
  return due.length > 0
}

const accept = (turn: Turn, entries: readonly string[], how: AcceptedHow): void => {
  for (const entry of entries) {
    const held = turn.state.record.entries.find((one) => one.entry === entry)
    if (held && held.accepted === null && held.withdrawn === null) turn.add({ type: "accepted", entry, how })
  }
}

/** What was read back and needed no yes is 'not challenged' once the worker goes on. */
export const settle = (turn: Turn): void => {
  const entries = turn.state.readBack?.entries ?? []
  const routine = entries.filter((entry) => !turn.state.record.entries.find((held) => held.entry === entry)?.needsYes)
  accept(turn, routine, "not_challenged")
  turn.set({ readBack: null })
}

const confirm = (turn: Turn, how: AcceptedHow, origin: Origin, heard: Heard | null): void => {
  const { question, readBack } = turn.state
  const proposed = question?.candidates.length === 1 ? question.candidates[0] : undefined
  if (proposed) {
    turn.set({ question: null, doubt: null })
    writeFacts(turn, [proposed], origin, heard)
    accept(turn, turn.written, how)
    turn.check()
    speakWritten(turn)
    return
  }
  if (!readBack) {
    turn.say("Nothing is waiting for an answer.")
    return
  }
  accept(turn, readBack.entries, how)
  const stands = answerWarnings(turn, readBack.entries, how)
  turn.set({ readBack: null })
  turn.sound("gotIt")
  if (stands) turn.say("Taken down as you said it. The warning stays open.")
  askWaiting(turn)
}

const withdraw = (turn: Turn, entries: readonly string[], because: "denied" | "undone"): Held[] => {
  const gone = turn.state.record.entries.filter((held) => entries.includes(held.entry) && held.withdrawn === null)
  answerWarnings(turn, entries, because)
  for (const held of gone) turn.add({ type: "withdrawn", entry: held.entry, because })
  turn.check()
  return gone
}

const deny = (turn: Turn): void => {
  const { question, readBack } = turn.state
  if (question) {
    const again = turn.state.doubt?.kind
    turn.set({ question: null, doubt: null })
    if (again && question.candidates.length > 0) askFor(turn, again, question.item)
    else turn.say("Left as it is.")
    return
  }
  if (!readBack) {
    turn.say("Nothing was just read back. Say undo to take back the last entry.")
    return
  }
  const gone = withdraw(turn, readBack.entries, "denied")
  turn.set({ readBack: null })
  turn.say(`Taken back. ${sayFacts(gone.map((held) => held.fact))}`)
  const last = gone.at(-1)
  if (gone.length === 1 && last) askFor(turn, last.fact.kind, last.item)
}

/** The part was wrong: what was just read back moves to the right one. */
const movePart = (turn: Turn, item: string, origin: Origin, heard: Heard | null): void => {
  const entries = turn.state.readBack?.entries ?? []
  const gone = withdraw(turn, entries, "denied").map((held) => held.fact)
  const moved = gone
    .filter((fact) => fact.kind !== "service")
    .map((fact) => ("subject" in fact ? ({ ...fact, subject: item } as RecordedFact) : fact))
  writeFacts(turn, [{ kind: "service", value: item }, ...moved], origin, heard)
  speakWritten(turn)
}

const correct = (turn: Turn, repair: Correct, origin: Origin, heard: Heard | null): void => {
  if (repair.field === "service" && typeof repair.value === "string") return movePart(turn, repair.value, origin, heard)
  const main = turn.state.readBack && turn.fact(turn.state.readBack.main)
  const { field, kind: _, ...rest } = repair
  const item = repair.subject ?? (main && "subject" in main ? main.subject : undefined) ?? turn.state.item
  const unit = unitFor(field)
  const parsed = RecordedFact.safeParse({ ...rest, kind: field, ...(unit && { unit }) })
  if (!parsed.success) {
    turn.say("I did not get that.")
    askFor(turn, field, item)
    return
  }
  const fact = withSubject(parsed.data, item)
  const wrong = heldIn(turn.state.record, slotOf(fact, ""))
  const others = (turn.state.readBack?.entries ?? []).filter((entry) => entry !== wrong?.entry)
  if (wrong) withdraw(turn, [wrong.entry], "denied")
  turn.set({
    question: null,
    doubt: null,
    readBack: others.length > 0 ? { entries: others, main: others[0]!, needsYes: false } : null,
  })
  settle(turn)
  writeFacts(turn, [fact], origin, heard)
  speakWritten(turn)
}

/** Takes back one entry: the one named, else the last that still stands. */
export const undo = (turn: Turn, entry?: string): void => {
  const last = turn.state.record.entries.findLast(
    (held) => held.withdrawn === null && (entry === undefined || held.entry === entry),
  )
  if (!last) {
    turn.say("There is nothing to undo.")
    return
  }
  withdraw(turn, [last.entry], "undone")
  turn.set({ readBack: null, question: null, doubt: null })
  const before = heldIn(turn.state.record, last.slot)
  const back = before ? ` It is back to: ${sayFacts([before.fact])}` : ""
  turn.say(`Undone. ${sayFacts([last.fact])}${back}`)
  speakWritten(turn)
}

/** Carries out one answer. */
export const answer = (turn: Turn, act: Answer, how: AcceptedHow, origin: Origin, heard: Heard | null): void => {
  switch (act.kind) {
    case "confirm":
      return confirm(turn, how, origin, heard)
    case "deny":
      return deny(turn)
    case "correct":
      return correct(turn, act, origin, heard)
    case "undo":
      return undo(turn)
    case "repeat":
      return turn.say(turn.state.lastSaid || "I have not said anything yet.")
    case "skip":
      turn.set({ question: null, doubt: null })
      return turn.say(turn.state.item ? `${capital(sayItem(turn.state.item))}. Left for now.` : "Left for now.")
  }
}
