/**
 * What a sentence does to the fact that was just read back: the same value with a yes confirms it, another value of the
 * same field corrects it, another part after a no corrects the part.
 */
import type { Correct, Fact } from "../facts/Fact"
import type { Ask, Context, Interpretation } from "../facts/Interpretation"
import { repairMarks } from "./applyRepairs"
import type { Mention } from "./assignSubjects"
import type { Claim } from "./Claim"
import { factOf, type Settled } from "./settleClaims"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"

interface Situation {
  utterance: Utterance
  mentions: readonly Mention[]
  settled: Settled
  /** Facts that name the parts spoken of. */
  services: readonly Fact[]
  context: Context
}

/** Null when the sentence leaves the read-back alone. */
export function repairReadBack(situation: Situation): Interpretation | null {
  const { utterance, settled, context, services } = situation
  const readback = context.readback
  if (context.asked !== "confirm" || !readback) return null
  const tone = toneOf(utterance)
  const same = settled.sure.filter((claim) => repairs(claim, situation))
  if (settled.ask?.kind === readback.kind && !same.some((one) => one.value === null))
    return { facts: [], ask: settled.ask, command: null }
  const claim = same[0]
  if (claim) {
    const others = settled.sure.filter((one) => one !== claim)
    return withValue(claim, others, situation, tone)
  }
  const other = situation.mentions.find((one) => one.item !== subjectOf(context))
  if ((tone.denies || isPointed(other, utterance)) && other && settled.sure.length === 0)
    return only(correctService(other.item))
  const elsewhere = tone.denies ? settled.sure.filter((one) => one.kind !== "step_done") : []
  if (elsewhere.length > 0) return ofElsewhere(elsewhere, situation, readback.kind)
  if (
    tone.isClear &&
    tone.denies !== tone.confirms &&
    (settled.sure.length > 0 || (tone.confirms && services.length > 0))
  ) {
    const answer: Fact = tone.denies
      ? { kind: "deny", value: true, ...subject(context) }
      : { kind: "confirm", value: true }
    return { facts: [answer, ...services, ...settled.sure.map(factOf)], ask: settled.ask, command: null }
  }
  const opens = utterance.islands[0]
  if (
    tone.isClear &&
    settled.sure.length === 0 &&
    opens?.rule === "answers.deny" &&
    opens.from === 0 &&
    utterance.islands.length > 1
  )
    return { facts: [], ask: askAgain(readback.kind), command: null }
  return null
}

/** "no, the length was fourteen metres": another field, or another part's, is what is not right, and is asked about. */
function ofElsewhere(claims: readonly Claim[], { services }: Situation, kind: string): Interpretation {
  const [first] = claims
  const isOne = claims.length === 1 && (first!.kind !== kind || services.length > 0)
  return isOne
    ? { facts: [...services], ask: askWhether(first!), command: null }
    : { facts: [], ask: askAgain(kind), command: null }
}

const only = (fact: Fact): Interpretation => ({ facts: [fact], ask: null, command: null })
const askAgain = (kind: string): Ask => ({ kind, because: "it was not said what is wrong" })
const askWhether = ({ kind, value }: Claim): Ask => ({
  kind,
  ...(value === null ? {} : { candidates: [value] }),
  because: "that is not what was read back",
})
const correctService = (item: string): Correct => ({ kind: "correct", field: "service", value: item })

function subjectOf(context: Context): string | undefined {
  const readback = context.readback
  if (!readback) return context.item
  if (readback.kind === "service") return readback.value
  return ("subject" in readback ? readback.subject : undefined) ?? context.item
}

const subject = (context: Context) => {
  const item = subjectOf(context)
  return item ? { subject: item } : {}
}

/** A claim of the same field and the same item is about what was read back. */
function repairs(claim: Claim, { context, mentions }: Situation): boolean {
  if (claim.kind !== context.readback?.kind || claim.kind === "step_done") return false
  const isNamed = mentions.some((one) => one.item === claim.subject)
  return !isNamed || claim.subject === subjectOf(context)
}

interface Tone {
  confirms: boolean
  denies: boolean
  /** No word that we do not know stands beside. */
  isClear: boolean
}

function toneOf(utterance: Utterance): Tone {
  const has = (rule: string) => utterance.islands.some((one) => one.rule === rule)
  return {
    confirms: utterance.islands.some((one) => one.rule === "answers.confirm" && isStrong(utterance, one.from, one.to)),
    denies: has("answers.deny") || repairMarks(utterance).length > 0 || has("guards.not") || isWrongOne(utterance),
    isClear: utterance.isClear,
  }
}

/** "that was the oil", "it's on the steelwork though" */
const isPointed = (mention: Mention | undefined, { words, tokens, islands }: Utterance): boolean =>
  mention !== undefined &&
  (mention.to === words.length ||
    isEdgeGap(tokens[mention.to - 1]!.after) ||
    /^(though|i'm (at|on|doing)|not the|no the)\b/.test(words.slice(mention.to).join(" "))) &&
  /\b(that's|that was|that is|that were|it's|it is|it was)( on| for)?( the)?$/.test(
    words.slice(0, mention.from).join(" "),
  ) &&
  !islands.some((one) => /^(guards\.(condition|plan|question|hedge)|steps\.(?!done)|parts\.notPart)/.test(one.rule))

/** "wrong pipe, it's the oil" */
const isWrongOne = (utterance: Utterance): boolean =>
  utterance.islands.some(
    (one) =>
      one.rule === "guards.undone" && /wrong (one|pipe|bond)$/.test(utterance.words.slice(one.from, one.to).join(" ")),
  )

/** "it is" before a value only leads up to it. */
const isStrong = (utterance: Utterance, from: number, to: number): boolean =>
  !/^(it is|good|definitely|so it is|that is it|certainly|indeed|lovely)$/.test(
    utterance.words.slice(from, to).join(" "),
  )

function withValue(
  claim: Claim,
  others: readonly Claim[],
  { context, settled, services }: Situation,
  tone: Tone,
): Interpretation {
  const readback = context.readback!
  const isSame = "value" in readback && readback.value === claim.value && qualifierOf(readback) === claim.qualifier
  const rest: Fact[] = [...services, ...others.map(factOf)]
  if (isSame && tone.denies) return { facts: [], ask: { ...askAgain(readback.kind), isSameAgain: true }, command: null }
  if (isSame) return { facts: [{ kind: "confirm", value: true }, ...rest], ask: settled.ask, command: null }
  if (tone.confirms && !tone.denies)
    return {
      facts: [],
      ask: { kind: readback.kind, candidates: valuesOf(readback, claim), because: "a yes and another value" },
      command: null,
    }
  return { facts: [correctOf(claim, context), ...rest], ask: settled.ask, command: null }
}

const qualifierOf = (readback: NonNullable<Context["readback"]>) =>
  "qualifier" in readback ? readback.qualifier : undefined

const valuesOf = (readback: NonNullable<Context["readback"]>, claim: Claim) =>
  [readback.value, claim.value].filter((one): one is number | string => one !== null)

function correctOf(claim: Claim, context: Context): Correct {
  const { unit, qualifier } = claim
  return {
    kind: "correct",
    field: claim.kind,
    value: claim.value,
    ...(unit ? { unit } : {}),
    ...(qualifier ? { qualifier } : {}),
    ...(claim.subject !== undefined ? { subject: claim.subject } : takesSubject(claim) ? subject(context) : {}),
  }
}

const takesSubject = (claim: Claim) => ["conductor_csa", "length", "distance", "resistance"].includes(claim.kind)
