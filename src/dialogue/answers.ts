/** Answers to the loop: yes, no, a repair, undo, say again, leave it. */
import { type Answer, type Correct, RecordedFact } from "../facts/Fact"
import type { Heard } from "../facts/Heard"
import { sayNumber } from "../facts/sayNumber"
import { unitFor } from "../facts/unitOf"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { heldIn } from "../record/holding"
import type { Held } from "../record/JobRecord"
import type { AcceptedHow, Origin } from "../record/LogLine"
import { itemOf, slotOf } from "../record/slotOf"
import { askFor } from "./askFor"
import { capital } from "./capital"
import { askAfresh, deny, sayBack, takeBackMain } from "./deny"
import { adopt, letGo } from "./homeless"
import { isDenied, isRepaired } from "./isDenied"
import { isUncertain } from "./needsYes"
import { type OwnQuestion, ownQuestion } from "./ownQuestion"
import { readOn } from "./readAloud"
import { sayFacts } from "./sayFacts"
import { accept, settle } from "./settle"
import { signOff } from "./signOff"
import { askWaiting, speakWritten } from "./speak"
import { startOver } from "./startOver"
import type { Turn } from "./Turn"
import { answerWarnings, withdraw, withSameValue } from "./withdraw"
import { withSubject } from "./withSubject"
import { writeFacts } from "./writeFacts"

/** A yes to a question of the loop's own. */
const ownYes: Readonly<Record<OwnQuestion, (turn: Turn) => void>> = {
  sign_off: signOff,
  start_over: startOver,
  read_on: readOn,
}

const confirm = (turn: Turn, how: AcceptedHow, origin: Origin, heard: Heard | null): void => {
  const { question, readBack } = turn.state
  // A question or a read-back that nobody heard cannot have been answered: what it proposed stays open.
  if (turn.state.unheard) return turn.set({ readBack: null })
  const own = ownQuestion(question?.kind)
  if (own) return ownYes[own](turn)
  const proposed = question?.candidates.length === 1 ? question.candidates[0] : undefined
  if (proposed) {
    settle(turn)
    const taken = adopt(turn, [proposed])
    turn.set({ question: null, doubt: null })
    writeFacts(turn, taken, origin, heard)
    // The yes was to what was proposed; values that waited for a part are read back on their own.
    const agreed = turn.written.filter((entry) => turn.fact(entry)?.kind === proposed.kind)
    accept(turn, agreed, how)
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
  if (!turn.hasMore) askWaiting(turn)
}

/** The part was wrong: what was just read back moves to the right one. */
const movePart = (turn: Turn, item: string, origin: Origin, heard: Heard | null): void => {
  const entries = turn.state.readBack?.entries ?? []
  const gone = withdraw(turn, entries, "denied")
  const back = sayBack(turn, gone)
  const left = gone.filter((held) => isRepaired(turn.state, held) && !heldIn(turn.state.record, held.slot))
  if (back) turn.say(back.trim())
  for (const { item: was, fact } of left)
    if (was) turn.say(`${capital(sayItem(was))}: no ${sayKind(fact.kind)} stands.`)
  const moved = gone
    .map((held) => held.fact)
    .filter((fact) => fact.kind !== "service")
    .map((fact) => ("subject" in fact ? ({ ...fact, subject: item } as RecordedFact) : fact))
  writeFacts(turn, [{ kind: "service", value: item }, ...moved], origin, heard)
  speakWritten(turn)
}

/** A repair to what was said no to before was misheard once more: it is not put forward again. */
const repairAfresh = (turn: Turn, fact: RecordedFact, wrong: Held | undefined): void => {
  const { readBack } = turn.state
  if (wrong && readBack?.main === wrong.entry) return takeBackMain(turn)
  const [kind, item] = [fact.kind, itemOf(fact)]
  const asked = { kind, item, candidates: [fact], words: "", because: "", heard: [] }
  askAfresh(turn, asked, true)
}

const correct = (turn: Turn, repair: Correct, origin: Origin, heard: Heard | null): void => {
  if (repair.field === "service" && typeof repair.value === "string") return movePart(turn, repair.value, origin, heard)
  const main = turn.state.readBack && turn.fact(turn.state.readBack.main)
  const { field, kind: _, ...rest } = repair
  const ofMain = main && "subject" in main ? main.subject : undefined
  // What was read back is what is repaired, even where another part is the one that is being worked on.
  const item = (main?.kind === field ? ofMain : undefined) ?? repair.subject ?? ofMain ?? turn.state.item
  const unit = unitFor(field)
  const parsed = RecordedFact.safeParse({ ...rest, kind: field, ...(unit && { unit }) })
  if (!parsed.success) {
    turn.say("I did not get that.")
    askFor(turn, field, item)
    return
  }
  const { subject: _said, ...bare } = parsed.data as RecordedFact & { subject?: string }
  const fact = withSubject(bare as RecordedFact, item)
  const wrong = heldIn(turn.state.record, slotOf(fact, ""))
  const others = (turn.state.readBack?.entries ?? []).filter((entry) => entry !== wrong?.entry)
  const isOfEar = heard?.margin != null
  if (isOfEar && turn.state.spelled !== slotOf(fact, "") && isDenied(turn.state, fact))
    return repairAfresh(turn, fact, wrong)
  // What an ear took for wrong once it may take for wrong again.
  turn.mustBeAnswered = isUncertain(heard)
  // Where a proposal was repaired, what stood before it was not said to be wrong.
  const isOfProposal = turn.state.question?.candidates.length === 1
  if (wrong && !isOfProposal) withdraw(turn, withSameValue(turn, [wrong.entry]), "denied")
  turn.set({
    question: null,
    doubt: null,
    readBack: others.length > 0 ? { entries: others, main: others[0]!, needsYes: false } : null,
  })
  settle(turn)
  writeFacts(turn, [fact], origin, heard)
  speakWritten(turn)
}

/** Entries taken back by one sentence: more is more likely misheard than meant. */
const mostUndone = 10

/** A value that had taken the place of one that was wrong leaves nothing behind: the wrong one does not come back. */
const sayEmptied = (turn: Turn, gone: readonly Held[]): string =>
  gone.length === 1 && gone.some((held) => isRepaired(turn.state, held)) ? " Nothing stands in its place." : ""

/** "Scratch that" of a sentence that wrote nothing yet: what it left open is let go, and no older entry is touched. */
const undoUnwritten = (turn: Turn): boolean => {
  const { question, doubt, homeless, record } = turn.state
  const heard = homeless?.heard ?? (doubt ? question?.heard : undefined) ?? []
  const last = heard.at(-1)
  const wrote = record.entries.some(
    ({ withdrawn, origin }) => withdrawn === null && origin.by === "voice" && origin.heard.at(-1) === last,
  )
  if (last === undefined || wrote) return false
  turn.set({ question: null, doubt: null })
  if (!letGo(turn)) turn.say("Nothing was taken down of that.")
  return true
}

/** Takes back one entry, the one named; else as many as are asked for of the last that still stand. */
export const undo = (turn: Turn, entry?: string, count = 1): void => {
  if (entry === undefined && count === 1 && undoUnwritten(turn)) return
  const standing = turn.state.record.entries.filter((held) => held.withdrawn === null)
  const named = entry === undefined ? standing.slice(-count) : standing.filter((held) => held.entry === entry)
  if (count > mostUndone) return turn.say(`I take back no more than ${sayNumber(mostUndone)} at once.`)
  turn.set({ question: null, doubt: null })
  if (named.length === 0) return turn.say("There is nothing to undo.")
  const gone = withdraw(
    turn,
    named.map((held) => held.entry),
    "undone",
  )
  // The rest of what was read back with it was not challenged.
  settle(turn)
  const back = sayBack(turn, gone) || sayEmptied(turn, gone)
  const short = gone.length < count ? " There was no more." : ""
  turn.say(`Undone. ${sayFacts(gone.map((held) => held.fact))}${back}${short}`)
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
      return undo(turn, undefined, act.count)
    case "repeat":
      return turn.say(turn.state.lastSaid || "I have not said anything yet.")
    case "skip":
      if (turn.state.question?.kind === "read_on") return readOn(turn)
      turn.set({ question: null, doubt: null })
      if (letGo(turn)) return
      return turn.say(turn.state.item ? `${capital(sayItem(turn.state.item))}. Left for now.` : "Left for now.")
  }
}
