/**
 * A doubt of the interpreter turned into a spoken question. Candidates are offered in words that sound different; a
 * single one can be taken with a yes; none means that it has to be said again.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Ask } from "../facts/Interpretation"
import { type Item, isBond } from "../facts/Item"
import { ownerOfStep } from "../facts/ownerOfStep"
import { readBack } from "../interpret/readBack"
import { sayItem } from "../interpret/sayItem"
import { sayKind } from "../interpret/sayKind"
import { sayStep } from "../interpret/sayStep"
import { itemOf } from "../record/slotOf"
import { howToLeave } from "./askFor"
import { candidatesOf } from "./candidatesOf"
import { capital } from "./capital"
import { hintAtZero } from "./hints"
import { keepHomeless } from "./homeless"
import { areSpelled, sayApart } from "./sayApart"
import { sayFacts } from "./sayFacts"
import { answerMe } from "./speak"
import { canBeSpelled, sayToSpell, slotNamed } from "./spelling"
import type { Turn } from "./Turn"

/** The over-range reading whose limit was not said, among what was just written. */
const overRangeOf = (turn: Turn) =>
  turn.challengeable.flatMap((entry) => {
    const fact = turn.fact(entry)
    return fact?.kind === "resistance" && fact.value === null ? [fact] : []
  })[0]

const wordsFor = (turn: Turn, ask: Ask, candidates: readonly RecordedFact[], item: Item | null): string => {
  const isOfJob = candidates.some((one) => one.kind === "step_done" && ownerOfStep[one.value] !== undefined)
  const isNamed = item && !isOfJob && !ofSupply.has(ask.kind) && ask.kind !== "service"
  const name = isNamed ? `${capital(sayItem(item))}. ` : ask.values ? `${sayFacts(ask.values)} ` : ""
  if (ask.kind === "resistance" && overRangeOf(turn)) return `${name}Over range. More than what?`
  if (ask.kind === "step_done") {
    const steps = candidates.flatMap((one) => (one.kind === "step_done" ? [one.value] : []))
    if (steps.includes("tester_proved_before") && steps.length > 1) return "The tester: before the test, or after it?"
    return steps[0] ? `${name}${capital(sayStep(steps[0]))}: is that done?` : `${name}What is done? Name the step.`
  }
  if (candidates.length === 1) return `${name}${readBack(bare(candidates[0]!))} ${answerMe}`
  const isSpelled = turn.state.spelled === slotNamed(ask.kind, item)
  if (candidates.length > 1) return `${name}Was that ${sayApart(candidates.map(bare), isSpelled).join(", or ")}?`
  if (ask.kind === "service") return `${name}Which part is that for?`
  if (ask.kind === "field") return "What is that number? Say it again with its unit."
  return `${name}Say the ${sayKind(ask.kind)} again.`
}

const bare = (fact: RecordedFact): RecordedFact => {
  const { subject: _, ...rest } = fact as RecordedFact & { subject?: string }
  return rest as RecordedFact
}

/** Kinds whose own words name the supply, whatever part is being talked about. */
const ofSupply = new Set(["neutral_csa", "fuse_rating", "earthing_arrangement", "polarity"])

/**
 * The part that a doubt is about, since it does not say so itself. Where several were named in one breath it is the one
 * of which nothing was understood; where that cannot be told, it is none, and the part is asked for after the value.
 */
const partOf = (turn: Turn, facts: readonly RecordedFact[]): Item | null => {
  const named = [...new Set(facts.flatMap((fact) => itemOf(fact) ?? []))].filter(isBond)
  if (named.length < 2) return turn.state.item
  const empty = named.filter((part) => facts.every((fact) => fact.kind === "service" || itemOf(fact) !== part))
  return empty.length === 1 ? empty[0]! : null
}

/** The same value in doubt for the second time running: to offer two of many once more would bring nothing new. */
const isWorthSpelling = (turn: Turn, kind: string, item: Item | null, offered: readonly RecordedFact[]): boolean => {
  const { question } = turn.before
  const isAgain = question?.kind === kind && question.item === item && turn.before.doubt !== null
  return isAgain && turn.heard?.margin != null && offered.length !== 1 && canBeSpelled(kind, offered[0]?.value)
}

/** Once more the same question, and nothing yet that could be offered: the worker may want to go on. */
const isStuck = (turn: Turn, kind: string, item: Item | null, candidates: readonly RecordedFact[]): boolean => {
  const { question, doubt } = turn.before
  return candidates.length === 0 && doubt?.kind === kind && question?.kind === kind && question.item === item
}

/** Two that one sound may have been, of an ear: told by their digits, and so is one that is neither. */
const isOfferInDigits = (turn: Turn, kind: string, offered: readonly RecordedFact[]): boolean =>
  turn.heard?.margin != null &&
  offered.length > 1 &&
  offered.every((one) => Number.isInteger(one.value) && canBeSpelled(kind, one.value))

/** What the doubt may have been, and how it is asked; remembers whether the answer will be in digits. */
const offer = (turn: Turn, ask: Ask, item: Item | null): { candidates: readonly RecordedFact[]; words: string } => {
  const candidates = candidatesOf(ask, item)
  const slot = slotNamed(ask.kind, item)
  const wasSpelled = turn.state.spelled === slot
  const isToSpell = !wasSpelled && isWorthSpelling(turn, ask.kind, item, candidates)
  const areDigits = areSpelled(candidates) || isOfferInDigits(turn, ask.kind, candidates)
  turn.set({ spelled: wasSpelled || isToSpell || areDigits ? slot : null })
  if (isToSpell) return { candidates: [], words: sayToSpell(ask.kind, item) }
  return { candidates, words: wordsFor(turn, ask, candidates, item) }
}

const kindOfQuestion = (ask: Ask, candidates: readonly RecordedFact[], step: string | undefined): string => {
  const isTester = candidates.length > 1 && candidates.some((one) => one.value === "tester_proved_before")
  if (isTester) return "tester_proved"
  return step ? `step:${step}` : ask.kind === "field" ? "" : ask.kind
}

/** `facts` are what the same sentence wrote. Asks aloud, keeps the question open, and logs it. */
export const raiseDoubt = (turn: Turn, ask: Ask, heard: readonly string[], facts: readonly RecordedFact[]): void => {
  // An over-range reading may be of the test leads, while another part is the one talked about.
  const over = ask.kind === "resistance" ? overRangeOf(turn)?.subject : undefined
  const item = over ?? (ofSupply.has(ask.kind) ? "supply" : partOf(turn, facts))
  if (item !== "supply" && item !== over) turn.set({ item })
  const { candidates, words } = offer(turn, ask, item)
  const { values, isSameAgain: _, ...asked } = ask
  if (values) keepHomeless(turn, values, heard)
  turn.add({ type: "asked", ask: asked, ...(item && { item }), ...(heard[0] && { heard: heard[0] }) })
  turn.sound("sayAgain")
  turn.say(words)
  if (isStuck(turn, ask.kind, item, candidates)) turn.say(howToLeave)
  hintAtZero(
    turn,
    ask.kind,
    candidates.map((one) => one.value),
  )
  const step = candidates.length === 1 && candidates[0]?.kind === "step_done" ? candidates[0].value : undefined
  const kind = kindOfQuestion(ask, candidates, step)
  const question = { kind, item, words, because: ask.because, candidates: step ? [] : candidates, heard }
  turn.set({ question: kind ? question : null, doubt: ask })
}
