/** A no: to what was read back, or to a question. What was wrong is taken back aloud and asked for once more. */
import type { RecordedFact } from "../facts/Fact"
import { isMeasured } from "../interpret/Claim"
import { allHeld, awaitingYes, heldIn } from "../record/holding"
import type { Held } from "../record/JobRecord"
import { askFor, howToLeave } from "./askFor"
import type { OpenQuestion } from "./DialogueState"
import { hintAtZero } from "./hints"
import { isRepaired } from "./isDenied"
import { takeUpAgain } from "./keepQuestion"
import { stopReading } from "./readAloud"
import { sayFacts } from "./sayFacts"
import { settle } from "./settle"
import { askWaiting, speakWritten } from "./speak"
import { haveDigits, slotNamed } from "./spelling"
import type { Turn } from "./Turn"
import { withdraw, withSameValue } from "./withdraw"

/** What holds again where these entries were: nothing is put back in silence. */
export const sayBack = (turn: Turn, gone: readonly Held[]): string => {
  const before = [...new Set(gone.map((held) => held.slot))].flatMap((slot) => heldIn(turn.state.record, slot) ?? [])
  return before.length > 0 ? ` It is back to: ${sayFacts(before.map((held) => held.fact))}` : ""
}

/** Asks for it again: where an ear was in doubt and said whole it went wrong before, digit by digit. */
export const askAfresh = (turn: Turn, { kind, item, candidates }: OpenQuestion, isAgain: boolean): void => {
  askFor(turn, kind, item, { byDigits: isAgain && turn.heard?.margin != null && haveDigits(kind, candidates) })
  hintAtZero(
    turn,
    kind,
    candidates.map((one) => one.value),
  )
}

/** An arrangement or a step that an ear made of something else: what waited before it is what the worker wants to answer. */
const isStray = (turn: Turn, fact: RecordedFact): boolean =>
  ["earthing_arrangement", "step_done"].includes(fact.kind) &&
  turn.heard?.margin != null &&
  awaitingYes(turn.state.record).length > 0

/** Whether the last words with a value named this part, and were not the first that came out wrong. */
const cameWrongAgain = ({ state, tools, heard }: Turn, item: string | null): boolean => {
  if (!heard || state.heardAs === null || state.misheard.length === 0) return false
  const { facts } = tools.interpret({ ...heard, text: state.heardAs, alternatives: [] }, {})
  return facts.some((fact) => fact.kind === "service" && fact.value === item)
}

/**
 * A part of which nothing else is on record, where it came up with the doubt itself or with a value that was wrong once
 * more: it may be what is misheard.
 */
const partOnlyOf = (turn: Turn, item: string | null, from: readonly string[]): Held | undefined => {
  if (turn.heard?.margin == null) return undefined
  const [only, ...more] = allHeld(turn.state.record).filter((held) => held.item === item)
  if (more.length > 0 || only?.fact.kind !== "service" || only.origin.by !== "voice") return undefined
  return from.includes(only.origin.heard.at(-1) ?? "") || cameWrongAgain(turn, item) ? only : undefined
}

/** Whether nothing of the part is left but its name, as heard, and it came with a value that was wrong once more. */
const isWrongPart = (turn: Turn, item: string | null): boolean => {
  const left = allHeld(turn.state.record).filter((held) => held.item === item)
  const isHeardName = (held: Held) => held.fact.kind === "service" && held.origin.by === "voice"
  return left.every(isHeardName) && cameWrongAgain(turn, item)
}

/** The name of the part goes as well, if it still stands; nobody is at it any more. */
const dropPart = (turn: Turn, item: string | null): Held[] => {
  const left = allHeld(turn.state.record).filter((held) => held.item === item)
  const gone = withdraw(
    turn,
    left.map((held) => held.entry),
    "denied",
  )
  turn.set({ item: null })
  return gone
}

/** What he is at is not known then, so that nothing is asked: he names the part with what he says again. */
const takeBackPart = (turn: Turn, { entry, fact }: Held): void => {
  withdraw(turn, [entry], "denied")
  turn.set({ readBack: null })
  turn.say(`Taken back. ${sayFacts([fact])}`)
}

/** Takes entries back as wrong, and asks for the one value that was among them. `isAgain`: it came wrong before. */
export const takeBack = (turn: Turn, entries: readonly string[], isAgain = false): void => {
  const interrupted = turn.state.readBack?.interrupted
  const all = withdraw(turn, withSameValue(turn, entries), "denied")
  const gone = all.filter((held) => entries.includes(held.entry))
  const [value, ...more] = gone.filter((held) => held.fact.kind !== "service")
  const isPartInDoubt = value !== undefined && more.length === 0 && isWrongPart(turn, value.item)
  if (isPartInDoubt) gone.unshift(...dropPart(turn, value.item))
  turn.set({ readBack: null })
  turn.say(`Taken back. ${sayFacts(gone.map((held) => held.fact))}${sayBack(turn, gone)}`)
  speakWritten(turn)
  if (takeUpAgain(turn, interrupted) || isPartInDoubt) return
  if (value && more.length === 0) {
    const { fact, item, needsYes } = value
    if (isStray(turn, fact)) return askWaiting(turn)
    const asked = { kind: fact.kind, item, candidates: [fact], words: "", because: "", heard: [] }
    askAfresh(turn, asked, isAgain || needsYes || isRepaired(turn.state, value))
  } else if (!value && gone.length > 0) askFor(turn, "service", null)
}

/** Takes back the one value that an answer is about; the others that were read back with it are let stand. */
export const takeBackMain = (turn: Turn): void => {
  const { readBack } = turn.state
  if (!readBack) return
  const { main } = readBack
  const others = readBack.entries.filter((entry) => entry !== main)
  turn.set({ readBack: others[0] ? { entries: others, main: others[0], needsYes: false } : null, question: null })
  settle(turn)
  takeBack(turn, [main], true)
}

/** A question for a value never ends in silence: what still stands is taken back, or it is asked once more. */
const denyQuestion = (turn: Turn, question: OpenQuestion): void => {
  const { doubt, readBack, refused, spelled } = turn.state
  const isValue = isMeasured(question.kind) || question.kind === "earthing_arrangement"
  const [first] = question.candidates
  if (isValue && !first && readBack && turn.fact(readBack.main)?.kind === question.kind) {
    turn.set({ doubt: null })
    return takeBackMain(turn)
  }
  turn.set({ question: null, doubt: null, refused: [...refused, ...question.candidates] })
  const part = first && doubt ? partOnlyOf(turn, question.item, question.heard) : undefined
  if (part) return takeBackPart(turn, part)
  if (first && doubt) {
    // What was read back before the doubt was not what the no is about.
    settle(turn)
    return askAfresh(turn, { ...question, kind: doubt.kind }, true)
  }
  if (first || !isValue) return turn.say("Left as it is.")
  askFor(turn, question.kind, question.item, { byDigits: spelled === slotNamed(question.kind, question.item) })
  turn.say(howToLeave)
}

export const deny = (turn: Turn): void => {
  const { question, readBack } = turn.state
  if (question?.kind === "read_on") return stopReading(turn)
  if (question) return denyQuestion(turn, question)
  if (!readBack) return turn.say("Nothing was just read back. Say undo to take back the last entry.")
  takeBack(turn, readBack.entries)
}
