/**
 * One text under one context to facts, in a fixed order: notes and commands first, since what they hold is not a value;
 * then whole answers, times, and at last everything that measures or reports work.
 */
import type { Fact } from "../facts/Fact"
import type { Context, Interpretation } from "../facts/Interpretation"
import { applyGuards } from "./applyGuards"
import { applyRepairs } from "./applyRepairs"
import { assignSubjects, type Mention, readMentions } from "./assignSubjects"
import { type Claim, isMeasured } from "./Claim"
import { readClauses } from "./Clauses"
import { claimQuantities } from "./claimQuantities"
import { askedStep, claimSteps } from "./claimSteps"
import { claimSupply } from "./claimSupply"
import { dropStrayNumbers } from "./dropStrayNumbers"
import { bitsOf } from "./GrammarBits"
import { hasNoFigure } from "./hasNoFigure"
import { joinDigits } from "./joinDigits"
import type { Language } from "./Language"
import { readAfterTalk } from "./readAfterTalk"
import { answersOnly, isYesNoAsked, readAbsence, readAnswer, readSkip } from "./readAnswer"
import { readCommand } from "./readCommand"
import { readNote } from "./readNote"
import { readNotHere } from "./readNotHere"
import { askPart, readServices, withNearPart } from "./readServices"
import { isTimeAsked, readTimeOfTest, readTimes } from "./readTimes"
import { readUtterance } from "./readUtterance"
import { repairReadBack } from "./repairReadBack"
import { factOf, settleClaims } from "./settleClaims"
import { shareAlso, shareRespectively } from "./shareOut"
import { hasTag, taggedNumbers, tagValue, type Utterance } from "./Utterance"

const nothing: Interpretation = { facts: [], ask: null, command: null }
const notes = bitsOf("notes")
const guards = bitsOf("guards")
const commands = bitsOf("commands")
const answering = bitsOf("answers", "repairs", "guards")

/** What the text says under the context. Never throws for any text that is not too long. */
export function interpretText(said: string, context: Context, language: Language): Interpretation {
  const text = context.digits ? joinDigits(said, measuredKind(context) !== "resistance") : said
  const utterance = readUtterance(text, language, context.asked)
  if (utterance.tokens.length === 0) return nothing
  const { grammars } = utterance
  const note = (grammars & notes) !== 0 ? readNote(utterance) : null
  if (note) return note
  if ((grammars & guards) !== 0 && utterance.islands.some((one) => one.rule === "guards.chatter")) return nothing
  const command = (grammars & commands) !== 0 ? readCommand(utterance, context) : null
  if (command) return command
  const polarity = readPolarityAnswer(utterance)
  if (polarity) return polarity
  const time = isTimeAsked(context) ? readTimes(utterance, context) : readTimeOfTest(utterance, context)
  if (time) return time
  const nearPart = askPart(utterance, context, language)
  if (nearPart) return { facts: [], ask: nearPart, command: null }
  const absence = readAbsence(utterance, context)
  if (absence) return absence
  const notHere = (grammars & guards) !== 0 ? readNotHere(utterance) : null
  if (notHere) return notHere
  const skip = readSkip(utterance, context)
  if (skip) return skip
  const answers = (grammars & ~answering) === 0 ? answersOnly(utterance) : null
  if (answers && !isCorrection(utterance, context)) return withCount(readAnswer(answers, context), utterance)
  return readAfterTalk(utterance) ?? readFacts(utterance, context, language)
}

/** The measured field that a bare number would belong to. */
const measuredKind = ({ asked, readback }: Context) => (asked === "confirm" ? readback?.kind : asked)

/** "undo the last three": how many is part of the answer and never a value. What is no count stands as far too many. */
function withCount(reading: Interpretation, utterance: Utterance): Interpretation {
  const island = utterance.islands.find((one) => one.rule === "answers.undo")
  const spoken = island && taggedNumbers(utterance, island, "n")[0]
  const count = spoken ? countOf(spoken.value) : Number((island && tagValue(island, "count")) ?? 1)
  if (count === 1 || reading.facts[0]?.kind !== "undo") return reading
  return { ...reading, facts: [{ ...reading.facts[0], count }] }
}

const mostCount = 99
const countOf = (value: number) => (Number.isInteger(value) && value >= 1 ? Math.min(value, mostCount) : mostCount)

/** "correct that" over a read-back wants to correct it but does not say to what. */
const isCorrection = (utterance: Utterance, context: Context): boolean =>
  context.asked === "confirm" &&
  context.readback !== undefined &&
  utterance.islands.some((one) =>
    /^(let me )?(correct|change|amend) (that|it)/.test(utterance.words.slice(one.from, one.to).join(" ")),
  )

function readPolarityAnswer(utterance: Utterance): Interpretation | null {
  const [island] = utterance.islands
  if (island?.rule !== "supply.polarityAnswer") return null
  const isAlone = utterance.islands.length === 1 && utterance.isClear
  const value = isAlone ? tagValue(island, "value") : undefined
  return value ? { facts: [{ kind: "polarity", value } as Fact], ask: null, command: null } : null
}

/** Questions about the supply, whose facts belong to no part. */
const supplyKinds = new Set(["neutral_csa", "fuse_rating", "earthing_arrangement", "polarity"])

/** A sentence that names a part is no answer to a question about the supply: the size in it is that part's. */
function withoutStaleQuestion(context: Context, mentions: readonly Mention[]): Context {
  if (!supplyKinds.has(context.asked ?? "") || mentions.length === 0) return context
  const { asked: _, ...rest } = context
  return rest
}

function readFacts(utterance: Utterance, given: Context, language: Language): Interpretation {
  const clauses = readClauses(utterance)
  const mentions = readMentions(utterance)
  const context = withoutStaleQuestion(given, mentions)
  const asReadBack = underReadBack(context, mentions)
  const claims = inOrder([
    ...claimQuantities(utterance, asReadBack),
    ...claimSteps(utterance, context),
    ...claimSupply(utterance, context),
  ])
  const addressed = dropStrayNumbers(claims, utterance, clauses, asReadBack)
  const guarded = applyGuards(addressed, utterance, clauses, context)
  const repaired = applyRepairs(guarded, utterance, context.asked === "confirm")
  const shared = shareRespectively(repaired, mentions, utterance)
  const owned = (shared ?? shareAlso(assignSubjects(repaired, mentions, utterance, context), mentions, utterance))
    .map((claim) => forLeads(claim, utterance))
    .map((claim) => (mentions.length > 0 ? claim : withNearPart(claim, utterance, language)))
  const settled = settleClaims(owned, utterance, asReadBack)
  const services = readServices({ utterance, clauses, mentions, claims: owned, context })
  const repair = repairReadBack({ utterance, mentions, settled, services: services.facts, context })
  if (repair) return repair
  const ask = settled.ask ?? services.ask ?? doubtOfAnswer(utterance, mentions, settled.sure, context)
  return { facts: [...services.facts, ...settled.sure.map(factOf)], ask, command: null }
}

const inOrder = (claims: Claim[]): readonly Claim[] =>
  claims.length < 2 ? claims : claims.sort((one, other) => one.from - other.from)

/**
 * While a measured fact waits for a yes, a bare number is taken for its field, unless the sentence names another part:
 * "water four square" after the supply neutral was read back is about the water.
 */
function underReadBack(context: Context, mentions: readonly Mention[]): Context {
  const { readback } = context
  const kind = context.asked === "confirm" ? readback?.kind : undefined
  if (!isMeasured(kind)) return context
  const owner = readback && "subject" in readback ? readback.subject : undefined
  const isElsewhere = mentions.length > 0 && mentions.every((one) => one.item !== owner)
  return isElsewhere ? context : { ...context, asked: kind }
}

/** What the open leads show belongs to the leads and never to a bond; so with the supply's loop and an electrode. */
function forLeads(claim: Claim, utterance: Utterance): Claim {
  if (claim.kind !== "resistance") return claim
  const on = utterance.islands.find((one) => one.from <= claim.from && claim.from < one.to)?.rule
  if (on === "supply.loop") return { ...claim, subject: "supply" }
  if (on === "supply.electrode") return { ...claim, subject: "electrode" }
  const isLeads = utterance.islands.some((one) => one.rule === "resistance.openLeads")
  return isLeads ? { ...claim, subject: "test_leads" } : claim
}

/** Words that were meant for the open question but did not settle it. */
function doubtOfAnswer(
  utterance: Utterance,
  mentions: readonly Mention[],
  sure: readonly Claim[],
  context: Context,
): Interpretation["ask"] {
  const isSame =
    utterance.islands.some((one) => one.rule === "quantity.same") &&
    utterance.islands.some((one) => one.rule === "parts.part")
  if (isSame && sure.length > 0 && mentions.length > 1)
    return { kind: "conductor_csa", because: "values are not copied: say them again" }
  if (sure.length > 0) return null
  const readback = context.readback
  const hasRepair = utterance.islands.some((one) => one.rule === "repairs.repair")
  const isClear = utterance.isClear
  if (context.asked === "confirm" && readback && hasRepair && isClear)
    return { kind: readback.kind, because: "it was not said what is right" }
  if (utterance.islands.some((one) => one.rule === "quantity.same") && isClear)
    return {
      kind: isMeasured(context.asked) ? context.asked : "conductor_csa",
      because: "values are not copied: say them again",
    }
  if (context.asked === "distance" && utterance.islands.some((one) => one.rule === "distance.place") && isClear)
    return { kind: "distance", because: "there was no number in it" }
  if (askedStep(context) && isNearStep(utterance))
    return { kind: "step_done", candidates: [askedStep(context)!], because: "a word may have been misheard" }
  if (hasNoFigure(utterance, context)) return { kind: context.asked!, because: "there was no figure in it" }
  if (isUnreadable(utterance, context)) return { kind: context.asked!, because: "it could not be read" }
  const isDone = utterance.islands.some((one) => one.rule === "steps.done") && utterance.islands.length === 1
  if (
    isDone &&
    isClear &&
    !askedStep(context) &&
    !isYesNoAsked(context) &&
    mentions.length === 0 &&
    !hasTag(utterance.islands[0]!, "step")
  )
    return { kind: "step_done", because: "it was not said what is done" }
  return null
}

const isBlank =
  /^(there's |there is )?(none( at all)?$|no (marking|markings|rating|figure|stamp)\b|(nothing|nowt|nowt at all) (stamped|printed|marked|written|showing|on (it|the (display|screen|meter|dial|tester|carrier|fuse|sheath|cable|drum|label)))\b)/

/** "cannot read the fuse": what was asked is named, and not known. */
function isUnreadable(utterance: Utterance, context: Context): boolean {
  const alone: Readonly<Record<string, string>> = {
    fuse_rating: "supply.fuseAlone",
    neutral_csa: "size.tailsAlone",
    polarity: "supply.polarityAlone",
    resistance: "resistance.shownAlone",
  }
  const rule = alone[context.asked ?? ""]
  if (isMeasured(context.asked) && isBlank.test(utterance.words.join(" "))) return true
  if (rule === undefined || !utterance.islands.some((one) => one.rule === rule)) return false
  return utterance.words.some((word) => /^(can't|cannot|couldn't|cannae|unable)$/.test(word))
}

/** "leads nuld": the thing that was asked about, and one word that nobody knows. */
const isNearStep = (utterance: Utterance): boolean =>
  utterance.tokens.length <= 3 &&
  utterance.leftovers.filter((one) => one === "unknown").length === 1 &&
  utterance.islands.length === 1 &&
  utterance.islands[0]!.rule === "steps.thing"
