/**
 * The closed loop as one pure step: what happened goes in, and out come the new state and, as data, the lines to keep
 * and the words to say. Nothing is said to be done before the line for it stands in front of the words.
 */
import type { Answer, Fact, RecordedFact } from "../facts/Fact"
import { type Heard, sureMargin } from "../facts/Heard"
import type { Command, Interpretation } from "../facts/Interpretation"
import type { AcceptedHow, Origin } from "../record/LogLine"
import { answer, undo } from "./answers"
import { askFor } from "./askFor"
import { carryOut } from "./carryOut"
import { openingCaution } from "./cautions"
import { askAfter, callForHelp, endChecks, showLife, thankForAnswer } from "./checkIns"
import { contextOf } from "./contextOf"
import type { DialogueEvent } from "./DialogueEvent"
import type { DialogueState, FaintAnswer } from "./DialogueState"
import { deny, takeBackMain } from "./deny"
import type { Effect } from "./Effect"
import { echoOf } from "./echoOf"
import { faintAnswer } from "./faintAnswer"
import { isOfGasSmell, sayGasSmell } from "./gasSmell"
import { hintAtMoreWords } from "./hints"
import { adopt, askForPart, letGo } from "./homeless"
import { isRepairToSame } from "./isRepairToSame"
import { isSaidAgain } from "./isSaidAgain"
import { askAgain, askOfPart, isWhereOf, keepInterrupted, sayDropped } from "./keepQuestion"
import { keepWarning } from "./keepWarning"
import { isOverdue } from "./loneWorker"
import { noteMisheard } from "./noteMisheard"
import { ownQuestion } from "./ownQuestion"
import { nextMissing } from "./plan"
import { raiseDoubt } from "./raiseDoubt"
import { remind } from "./remind"
import { resume } from "./resume"
import { saidTwice } from "./saidTwice"
import { accept, settle } from "./settle"
import { sayCautions, speakWritten } from "./speak"
import { askWhether, isStrayPart } from "./strayPart"
import type { Tools } from "./Tools"
import { Turn } from "./Turn"
import { takeBackContested } from "./takeBackContested"
import { withoutDenied } from "./withoutDenied"
import { writeFacts } from "./writeFacts"

export interface Stepped {
  state: DialogueState
  effects: Effect[]
}

const answerKinds = ["confirm", "deny", "correct", "undo", "repeat", "skip"]
const isAnswer = (fact: Fact): fact is Answer => answerKinds.includes(fact.kind)
const isRecorded = (fact: Fact): fact is RecordedFact => !isAnswer(fact)

/** Where facts came from: the utterance, or a hand. */
interface Source {
  origin: Origin
  heard: Heard | null
}
const byHand = (reason: string): Source => ({ origin: { by: "hand", reason }, heard: null })

/** Naming a part and nothing else is met with the question that comes next for it. */
const promptForPart = (turn: Turn, facts: readonly RecordedFact[]): boolean => {
  const named = facts.length === 1 && facts[0]?.kind === "service" ? facts[0].value : null
  const missing = named && nextMissing(turn.state.record, named, turn.plan)
  if (!missing || turn.written.length > 1) return false
  speakWrittenPart(turn)
  askFor(turn, missing, named)
  return true
}

/** A part that is new to the record brings its caution, but needs no read-back: the question names it. */
const speakWrittenPart = (turn: Turn): void => {
  const before = turn.written.splice(0)
  turn.check()
  turn.set({ readBack: null })
  // What an ear was in doubt about may be another part: that waits until something of it is agreed.
  const isSure = turn.heard?.margin == null || turn.heard.margin >= sureMargin
  if (isSure) accept(turn, before, "not_challenged")
  sayCautions(turn, before)
}

/** `doubted`: something in the same breath is about to be asked, so no other question is put. */
const write = (turn: Turn, facts: readonly RecordedFact[], source: Source, doubted = false): void => {
  turn.isDoubted = doubted
  const placed = adopt(turn, facts)
  turn.set({ question: null, doubt: null })
  writeFacts(turn, placed, source.origin, source.heard)
  // A part that came with a doubt is named by the question about it.
  if (doubted && placed.every((fact) => fact.kind === "service")) speakWrittenPart(turn)
  else if (doubted || !promptForPart(turn, placed)) speakWritten(turn)
  if (turn.state.homeless) askForPart(turn)
}

/** What changes nothing of what is being asked: a worker may look at a screen before he says yes to what was read back. */
const noNews: readonly (Answer | Command)["kind"][] = ["repeat", "stop_listening", "start_listening", "show", "save"]
const isNoNews = (act: Answer | Command) => noNews.includes(act.kind)

/** Goes on with something else: a read-back ends, and a question of the loop's own falls, so that no later yes meets it. */
const goOn = (turn: Turn, command: Command | null): void => {
  settle(turn)
  if (command?.kind === "read_on" || command?.kind === "stop_reading") return
  turn.set({ pages: [], ...(ownQuestion(turn.state.question?.kind) && { question: null }) })
}

/** Notes alone are an aside: what stood before them is taken up again, unless they tell of a smell of gas. */
const writeNotes = (turn: Turn, facts: readonly RecordedFact[], source: Source): void => {
  const before = turn.state
  goOn(turn, null)
  write(turn, facts, source)
  const { heard } = source
  if (heard && facts.some((fact) => isOfGasSmell(turn, fact, heard))) sayGasSmell(turn)
  else askAgain(turn, before)
}

/** Writes what was said of the job; what was asked before is told to be dropped, or put again with the part now named. */
const writeSaid = (turn: Turn, facts: readonly RecordedFact[], source: Source, asked: DialogueState | null): void => {
  const isDoubted = turn.isDoubted
  const { question } = turn.state
  const { doubt, spelled } = turn.before
  if (!asked || isDoubted || !isWhereOf(asked, facts)) {
    if (asked) turn.aside = sayDropped(asked, facts)
    write(turn, facts, source, isDoubted)
    return keepInterrupted(turn, facts, { question, doubt, spelled })
  }
  write(turn, facts, source, true)
  askOfPart(turn, asked)
}

/** Works through one interpretation: answers first, then facts, then a doubt, then a command. */
const act = (turn: Turn, reading: Interpretation, how: AcceptedHow, source: Source): void => {
  const { origin, heard } = source
  const { ask, command } = reading
  const before = turn.state
  const answers = reading.facts.filter(isAnswer)
  const facts = reading.facts.filter(isRecorded)
  const isOnlyFacts = answers.length === 0 && facts.length > 0
  if (isOnlyFacts && !ask && facts.every((fact) => fact.kind === "note")) return writeNotes(turn, facts, source)
  if (isOnlyFacts || (answers.length === 0 && command && !isNoNews(command))) goOn(turn, command)
  turn.hasMore = facts.length > 0 || ask !== null || command !== null
  for (const one of answers) answer(turn, one, how, origin, heard)
  turn.written.length = 0
  turn.isDoubted = ask !== null
  if (facts.length > 0) writeSaid(turn, facts, source, isOnlyFacts ? before : null)
  if (ask && reading.facts.length === 0) takeBackContested(turn, ask)
  if (ask?.kind === "keep_reason") keepWarning(turn, "")
  else if (ask) raiseDoubt(turn, ask, origin.by === "voice" ? origin.heard : [], facts)
  if (command) carryOut(turn, command)
}

/**
 * Whether the whole of it answers "are you well?". While that question stands, a bare yes or no is meant for it and for
 * nothing else, and while the app rests, everything is.
 */
const answersCheckIn = (turn: Turn, reading: Interpretation): boolean => {
  const [only] = reading.facts
  const isNo = reading.facts.length === 1 && only?.kind === "deny"
  const isYes = (reading.facts.length === 1 && only?.kind === "confirm") || reading.command?.kind === "all_right"
  if (isNo) {
    callForHelp(turn)
    return true
  }
  const isRest = !turn.state.listening && reading.command?.kind !== "start_listening"
  if (!isYes && !isRest) return false
  showLife(turn)
  thankForAnswer(turn)
  return true
}

/** Taken down and answered even while the app rests or asks after the worker. What was asked before stays open. */
const onGasSmell = (turn: Turn, heard: Heard): void => {
  turn.add({ type: "heard", heard })
  showLife(turn)
  sayGasSmell(turn)
}

/**
 * It is not asked for a yes or a no by name: that could answer itself. In noise a short word is like many others, and
 * what has more words is not.
 */
const askToRepeat = (turn: Turn, { said }: FaintAnswer): void => {
  turn.sound("sayAgain")
  turn.say("Say that again, in more words.")
  if (said === "confirm" || said === "deny") hintAtMoreWords(turn)
}

const onHeard = (turn: Turn, heard: Heard): void => {
  turn.heard = heard
  const before = turn.state
  const echo = heard.engine === "typed" ? null : echoOf(before.lastSentences, heard.text)
  if (echo === "whole") return
  const reading = turn.tools.interpret(heard, contextOf(before, turn.at))
  if (echo === "part" && !isSaidAgain(before, reading, reading.facts.filter(isRecorded))) return
  const empty = reading.facts.length === 0 && !reading.ask && !reading.command
  turn.set({ lastHeard: { text: heard.text, understood: !empty } })
  if (before.question?.kind === "keep_reason" && empty && heard.engine === "typed") return keepWarning(turn, heard.text)
  if (empty) return
  turn.set({ lastSentences: [] })
  if (reading.command?.kind === "smells_gas") return onGasSmell(turn, heard)
  const isAsked = isOverdue(before.loneWorker)
  if (!before.listening && !isAsked && reading.command?.kind !== "start_listening") return
  turn.add({ type: "heard", heard })
  if (isAsked && answersCheckIn(turn, reading)) return
  showLife(turn)
  const origin: Origin = { by: "voice", heard: [...(before.question?.heard ?? []), heard.id] }
  const faint = faintAnswer(reading, heard, before)
  turn.set({ faint })
  if (faint) return askToRepeat(turn, faint)
  takeHeard(turn, reading, { origin, heard })
  noteMisheard(turn, heard, reading)
}

const takeHeard = (turn: Turn, reading: Interpretation, source: Source & { heard: Heard }): void => {
  const { before } = turn
  const { heard } = source
  if (isRepairToSame(before, reading, heard)) return before.question ? deny(turn) : takeBackMain(turn)
  if (isStrayPart(before, reading, heard)) return askWhether(turn, reading)
  act(turn, saidTwice(before, withoutDenied(before, reading, heard), heard), "said_yes", source)
}

const isAnswerAct = (one: Answer | Command): one is Answer => answerKinds.includes(one.kind)

/** A tap beside an entry is about that entry, whatever was read back last. */
const turnTo = (turn: Turn, about: string): void => {
  if (turn.state.readBack && !turn.state.readBack.entries.includes(about)) settle(turn)
  const held = turn.state.record.entries.find((one) => one.entry === about)
  if (!held) return
  turn.set({ readBack: { entries: [about], main: about, needsYes: held.needsYes }, question: null, doubt: null })
}

const onTapped = (turn: Turn, event: Extract<DialogueEvent, { type: "tapped" }>): void => {
  const { act: one, about } = event
  const reading: Interpretation = isAnswerAct(one)
    ? { facts: [one], ask: null, command: null }
    : { facts: [], ask: null, command: one }
  if (!about && isOverdue(turn.state.loneWorker) && answersCheckIn(turn, reading)) return
  showLife(turn)
  if (about) turnTo(turn, about)
  if (one.kind === "keep_it") return keepWarning(turn, one.reason, about)
  if (one.kind === "undo") return undo(turn, about, one.count)
  act(turn, reading, "tapped", byHand("tapped"))
}

const onOpened = (turn: Turn, event: Extract<DialogueEvent, { type: "opened" }>): void => {
  turn.set({ job: event.job })
  turn.add({ type: "job_opened", place: event.place, pack: event.pack, caution: openingCaution })
  turn.check()
  turn.say(`New job. ${openingCaution}`)
}

/** The job is put away by hand. */
const onLeft = (turn: Turn): void => {
  settle(turn)
  letGo(turn)
  endChecks(turn)
  turn.add({ type: "put_away" })
}

/** What needs no open job. */
const needsNoJob = new Set<DialogueEvent["type"]>(["opened", "resumed", "preferred"])

/** What was said before a hand acted can no longer be heard. */
const isByHand = new Set<DialogueEvent["type"]>(["tapped", "entered", "chose"])

const handle = (turn: Turn, event: DialogueEvent): void => {
  if (turn.state.job === null && !needsNoJob.has(event.type)) return
  if (event.type !== "waited" && event.type !== "ticked") turn.set({ reminders: 0 })
  if (isByHand.has(event.type)) turn.set({ lastSentences: [] })
  switch (event.type) {
    case "opened":
      return onOpened(turn, event)
    case "resumed":
      return resume(turn, event.lines)
    case "heard":
      return onHeard(turn, event.heard)
    case "tapped":
      return onTapped(turn, event)
    case "entered":
      showLife(turn)
      settle(turn)
      return write(turn, event.facts, byHand(event.reason))
    case "chose":
      showLife(turn)
      settle(turn)
      return write(turn, [{ kind: "service", value: event.item }], byHand("chosen"))
    case "left":
      return onLeft(turn)
    case "waited":
      return remind(turn)
    case "ticked":
      return askAfter(turn)
    case "preferred":
      return turn.set({ preferences: event.preferences })
  }
}

/** What the loop records and says next. The same state, event and ids always give the same answer. */
export const step = (state: DialogueState, event: DialogueEvent, tools: Tools): Stepped => {
  const turn = new Turn(state, event.at, tools)
  handle(turn, event)
  const listens: Effect[] = turn.state.listening === state.listening ? [] : [{ do: "listen", on: turn.state.listening }]
  return turn.finish(listens)
}
