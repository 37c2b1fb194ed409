/**
 * Answers that make up a whole utterance: yes, no, undo, say again, skip. A yes or no that comes with words we do not
 * know is somebody else's conversation and answers nothing.
 */
import type { Fact } from "../facts/Fact"
import type { Context, Interpretation } from "../facts/Interpretation"
import { ownerOfStep } from "../facts/ownerOfStep"
import { isMeasured } from "./Claim"
import { askedStep } from "./claimSteps"
import { isOfElse, isPlainAbsence } from "./isPlainAbsence"
import { isEdgeGap } from "./Token"
import { tagValue, type Utterance } from "./Utterance"

export type AnswerKind = "confirm" | "deny" | "undo" | "repeat" | "skip" | "maybe"

const nothing: Interpretation = { facts: [], ask: null, command: null }
const wipes = /^(scratch|scrap|strike|delete|cancel|forget|undo|rub|disregard|scrub|bin|erase)/

/** Words that may stand beside a yes or a no; any other makes it somebody else's conversation. */
const besideAnswer = new Set(
  "it it's that that's this this one the now then mate pal lads boss gaffer please thanks thank cheers ta oh och ach so well lovely job you i i'd say lad fella sure and but for me is do we bit me there they that'll what's 'tis tis aye yes yeah no right ok okay grand correct all of big small bare wee little buddy love not on to with at first again away back please man hen".split(
    " ",
  ),
)

/** Words that may stand beside "skip" and "undo", which are also said of screws and clamps. */
const besideWish = new Set(
  "please mate pal then for now the just so oh right yeah yes aye no one that it again i i'll let's we we'll thanks cheers on to with".split(
    " ",
  ),
)

/** "have you got it right": a question that holds an answer's words. */
const asksBack = /^(have|did|has|does|are) (you|we|it|that|i)$/

/** Kinds of answer in the utterance, when it holds nothing else. */
export function answersOnly(utterance: Utterance): ReadonlySet<AnswerKind> | null {
  if (!utterance.islands.every((one) => /^(answers|repairs|guards\.undone)/.test(one.rule))) return null
  if (!utterance.isClear || asksBack.test(utterance.words.slice(0, 2).join(" "))) return null
  const kinds = kindsOf(utterance)
  if (!kinds) return null
  const mayStand = kinds.has("skip") || kinds.has("undo") ? besideWish : besideAnswer
  const isLoose = utterance.leftovers.some((one, at) => one === "neutral" && !mayStand.has(utterance.words[at]!))
  if (mayStand === besideWish && utterance.words.includes("there")) return null
  return kinds.size > 0 && !isLoose ? kinds : null
}

function kindsOf(utterance: Utterance): ReadonlySet<AnswerKind> | null {
  const kinds = new Set<AnswerKind | "reason" | "hum">()
  for (const island of utterance.islands) {
    const text = utterance.words.slice(island.from, island.to).join(" ")
    const isAsked = utterance.tokens[island.to - 1]!.after === "question"
    const isReason = island.rule === "guards.undone" && /^(the )?wrong /.test(text) && island.from > 0
    const isHum = /^(uh huh|mhm|mm hmm?|mmhm|go on)$/.test(text)
    const kind = text === "sorry" && isAsked ? "repeat" : answerKind(island.rule, text)
    if (!kind && !isReason) return null
    kinds.add(isReason ? "reason" : isHum ? "hum" : kind!)
  }
  // "no no, you're right": the no is of what was feared.
  if (
    /^(no )+(you're (quite |dead )?right|no (that's|it's) (quite |dead |all )?(right|correct|spot on))\b/.test(
      utterance.words.join(" "),
    )
  )
    kinds.delete("deny")
  // "undo that, wrong pipe" gives its reason; no other answer has one.
  if (kinds.delete("reason") && !kinds.has("undo")) return null
  // "uh huh, yes": beside a yes a hum is one too.
  if (kinds.delete("hum") && !(kinds.size === 1 && kinds.has("confirm"))) kinds.add("maybe")
  return kinds as ReadonlySet<AnswerKind>
}

function answerKind(rule: string, text: string): AnswerKind | null {
  switch (rule) {
    case "answers.confirm":
    case "answers.deny":
    case "answers.undo":
    case "answers.repeat":
    case "answers.skip":
    case "answers.maybe":
      return rule.slice("answers.".length) as AnswerKind
    case "repairs.no":
      return text === "no" || text === "nope" ? "deny" : "maybe"
    case "repairs.repair":
      if (wipes.test(text)) return "undo"
      return /wrong|not right|not that|no no/.test(text) ? "deny" : "maybe"
    default:
      return null
  }
}

/** "skip that, can't get the tape in there": a skip that gives its reason. */
export function readSkip(utterance: Utterance, context: Context): Interpretation | null {
  const [first, ...rest] = utterance.islands
  if (context.asked === undefined || first?.rule !== "answers.skip" || first.from > 0) return null
  if (!isEdgeGap(utterance.tokens[first.to - 1]!.after) || rest.some((one) => isValue.test(one.rule))) return null
  const cannot = utterance.words.slice(first.to).some((word) => /^(can't|cannot|couldn't|cannae|won't)$/.test(word))
  return cannot ? only({ kind: "skip", value: true, ...subjectOf(context) }) : null
}

const isValue = /^(quantity|size|length|distance|resistance|supply|arrangement|parts|tasks|survey)\./

/** "no gas", "none", "not here": the part asked after is not there. Only that part is closed by it. */
export function readAbsence(utterance: Utterance, context: Context): Interpretation | null {
  if (context.asked === "service" && isAbsenceOnly(utterance))
    return { facts: [], ask: { kind: "service", because: "then which part is next?" }, command: null }
  const item = context.asked?.startsWith("service_present:") ? context.asked.slice("service_present:".length) : null
  if (!item) return null
  const absent = utterance.islands.flatMap((one) => (one.rule === "guards.absent" ? (tagValue(one, "item") ?? []) : []))
  // "no gas" while the water is asked after says nothing of the water.
  if (absent.length > 0 && !absent.includes(item)) return null
  if (isOfElse(utterance, item)) return null
  const isPlain = isPlainAbsence(utterance, item)
  const denies =
    isPlain ||
    utterance.islands.some((one) => /^(guards\.(absent|not)|answers\.deny|resistance\.nothingShown)$/.test(one.rule)) ||
    utterance.words.includes("none")
  const others = utterance.islands.filter(
    (one) =>
      /^(parts\.part|quantity|size|length|distance|steps)/.test(one.rule) &&
      tagValue(one, "item") !== item &&
      !(isPlain && (one.rule === "steps.done" || utterance.words[one.from - 1] === "nor")),
  )
  const isClear =
    isPlain ||
    utterance.leftovers.every((one, at) => (one !== "unknown" && one !== "chatter") || utterance.words[at] === "none")
  return denies && isClear && others.length === 0
    ? only({ kind: "deny", value: true, subject: context.item ?? item })
    : null
}

const isAbsenceOnly = (utterance: Utterance): boolean =>
  utterance.islands.length > 0 &&
  utterance.islands.every((one) => one.rule === "guards.absent") &&
  utterance.leftovers.every((one) => one === null || one === "skippable")

/** What the answer means under the open question. */
export function readAnswer(kinds: ReadonlySet<AnswerKind>, context: Context): Interpretation {
  // "no, scrap that" over a read-back: what is scrapped is what was read back.
  if (kinds.has("undo") && !(kinds.has("deny") && context.asked === "confirm"))
    return only({ kind: "undo", value: true })
  if (kinds.has("repeat") && !kinds.has("confirm") && !kinds.has("deny")) return only({ kind: "repeat", value: true })
  if (kinds.has("skip") && !kinds.has("confirm"))
    return context.asked === undefined ? nothing : only({ kind: "skip", value: true, ...subjectOf(context) })
  if (!isYesNoAsked(context)) return isValueAsked(context) ? readRefusal(kinds, context) : nothing
  if (kinds.has("maybe") || (kinds.has("confirm") && kinds.has("deny"))) return asksAgain(kinds, context)
  if (kinds.has("deny")) return only({ kind: "deny", value: true, ...subjectOf(context) })
  return kinds.has("confirm") ? agree(context) : nothing
}

const only = (fact: Fact): Interpretation => ({ facts: [fact], ask: null, command: null })

const subjectOf = (context: Context) => {
  const item =
    context.item ?? (context.readback && "subject" in context.readback ? context.readback.subject : undefined)
  return item ? { subject: item } : {}
}

/** Questions of the loop itself that take a yes or a no. */
const ownQuestions = new Set(["confirm", "read_on", "sign_off", "start_over", "check_in"])

/** A yes or no means something only when one was asked for. */
export const isYesNoAsked = (context: Context): boolean =>
  ownQuestions.has(context.asked ?? "") ||
  askedStep(context) !== null ||
  (context.asked?.startsWith("service_present:") ?? false)

/** Asked for a value, a plain no says that the question is wrong: the loop answers it, and nothing is written. */
const isValueAsked = ({ asked }: Context): boolean => isMeasured(asked) || asked === "earthing_arrangement"

const readRefusal = (kinds: ReadonlySet<AnswerKind>, context: Context): Interpretation =>
  kinds.size === 1 && kinds.has("deny") ? only({ kind: "deny", value: true, ...subjectOf(context) }) : nothing

function asksAgain(kinds: ReadonlySet<AnswerKind>, context: Context): Interpretation {
  // A breath before a question of the loop's own, such as whether to sign, answers nothing and is not worth a question.
  if (context.asked !== "confirm" && ownQuestions.has(context.asked ?? "")) return nothing
  // "right" before a step is only a breath; before a read-back it may be a yes.
  if (context.asked !== "confirm" && kinds.size === 1) return nothing
  const kind = context.readback?.kind ?? (askedStep(context) ? "step_done" : "confirm")
  return { facts: [], ask: { kind, because: "that was neither yes nor no" }, command: null }
}

function agree(context: Context): Interpretation {
  const step = askedStep(context)
  if (step) {
    return only({ kind: "step_done", value: step, ...(ownerOfStep[step] ? {} : subjectOf(context)) })
  }
  const present = context.asked?.startsWith("service_present:") ? context.asked.slice("service_present:".length) : null
  return present ? only({ kind: "service", value: present }) : only({ kind: "confirm", value: true })
}
