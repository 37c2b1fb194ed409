/**
 * Warnings aloud. A warning is new when it was never spoken, and again when it comes back after it was put right. One
 * that stood before in the very same words, about a value that was only said anew, is said in short.
 */
import type { RecordedFact } from "../facts/Fact"
import type { Finding } from "../facts/Finding"
import { sayNumber } from "../facts/sayNumber"
import type { Held } from "../record/JobRecord"
import { itemOf } from "../record/slotOf"
import { isKept, isWarning, openWarnings, warningKey } from "../record/warningKey"
import type { Turn } from "./Turn"

/** Said with the first warning of a job only: after that the worker knows it. */
const keepHint = "To leave one as it is, say keep it because, and the reason."

const openBefore = ({ before }: Turn): Finding[] => openWarnings(before.record, before.checked.findings)

/** Warnings to be spoken now: they hold, were not kept, and are new or back again. */
export const freshWarnings = (turn: Turn): Finding[] => {
  const { record, checked } = turn.state
  const spoken = new Set(record.warnings.map((one) => one.warning))
  const stood = new Set(openBefore(turn).map(warningKey))
  return checked.findings.filter((finding) => {
    const key = warningKey(finding)
    return isWarning(finding) && !isKept(record, finding) && !(spoken.has(key) && stood.has(key))
  })
}

/** Whether the same was said already and has stood open since, so that only what it rests on is another entry. */
const stoodBefore = (turn: Turn, finding: Finding) =>
  turn.before.record.warnings.some((one) => one.said === `Warning. ${finding.spoken}`) &&
  openBefore(turn).some((one) => one.spoken === finding.spoken)

/** What is wrong without what to do about it: "Water: six square is too small." */
const inShort = (spoken: string) => /^(Stop[.] )?[^.]+[.]/.exec(spoken)?.[0] ?? spoken

export const sayWarnings = (turn: Turn, fresh: readonly Finding[]): void => {
  if (fresh.length === 0) return
  const isFirst = turn.state.record.warnings.length === 0
  turn.sound("warning")
  for (const finding of fresh) {
    const words = stoodBefore(turn, finding) ? `As before. ${inShort(finding.spoken)}` : `Warning. ${finding.spoken}`
    turn.say(words, [warningKey(finding)])
  }
  if (isFirst) turn.say(keepHint)
}

const unitWords: Readonly<Record<string, string>> = {
  mm2: "square",
  m: "metre",
  mm: "millimetre",
  ohm: "ohm",
  A: "amp",
}

/** Whether the words of the warning hold the value itself, so that it need not be read back beside it. */
const names = (finding: Finding, fact: RecordedFact): boolean => {
  const item = itemOf(fact)
  if (finding.item !== undefined && finding.item !== item) return false
  if (!("unit" in fact) || typeof fact.value !== "number") return fact.kind !== "earthing_arrangement"
  const isBounded = "qualifier" in fact && fact.qualifier !== undefined
  return !isBounded && finding.spoken.toLowerCase().includes(`${sayNumber(fact.value)} ${unitWords[fact.unit]}`)
}

/** Whether one of the warnings that were just spoken has read the entry back. */
export const isReadByWarning = (fresh: readonly Finding[], held: Pick<Held, "entry" | "fact">): boolean =>
  fresh.some((finding) => finding.rests.includes(held.entry) && names(finding, held.fact))

/** The entries that an answer to a warning is about: what waits for a yes, else the one that set it off last. */
export const entriesOf = (turn: Turn, finding: Finding): string[] => {
  const rests = turn.state.record.entries.filter(
    (held) => finding.rests.includes(held.entry) && held.withdrawn === null,
  )
  const waiting = rests.filter((held) => held.needsYes && held.accepted === null)
  const about = waiting.length > 0 ? waiting : rests.slice(-1)
  return about.map((held) => held.entry)
}
