/**
 * Takes back what was only wished, asked, planned, doubted or denied. When in doubt a step is dropped: a step that is
 * logged but not done is the worst that can happen here.
 */
import type { Context } from "../facts/Interpretation"
import { againstWish } from "./againstWish"
import { type Claim, isMeasured } from "./Claim"
import type { Clauses } from "./Clauses"
import { circuitOf } from "./circuitOf"
import { isSold } from "./decideQuantity"
import { foreignSubject } from "./foreignSubject"
import { bitsOf } from "./GrammarBits"
import {
  isDictating,
  isDoneBySomebody,
  isDuty,
  isJudgement,
  isNextWork,
  isNoCondition,
  isOfOtherField,
  isOfSupply,
  isOutdone,
  isPast,
  isPromised,
  isSupposing,
  isUnchanged,
  mayDeny,
  reachesClause,
} from "./harmlessGuards"
import { isOfLeads } from "./isOfLeads"
import { isQuestion } from "./isQuestion"
import { isReckoned } from "./isReckoned"
import {
  beginsAsking,
  hasOwnSubject,
  isChatter,
  isContradicted,
  isElsewhere,
  isLeftOpen,
  isOfSwitch,
  isSmallBetween,
  isSupposed,
  isUnclear,
  leadsIn,
} from "./marksOfDoubt"
import { isEdgeGap } from "./Token"
import { hasTag, type Island, type Utterance } from "./Utterance"
import { trait } from "./wordTraits"

/** Claims that stand after all guards; some come back with a doubt. */
export function applyGuards(
  claims: readonly Claim[],
  utterance: Utterance,
  clauses: Clauses,
  context: Context,
): Claim[] {
  if (claims.length === 0) return []
  const guards = new Guards(utterance, clauses, context)
  const kept: Claim[] = []
  for (const claim of claims) {
    const judged = guards.judge(claim)
    if (judged) kept.push(judged)
  }
  return kept.length < claims.length ? againstWish(kept, claims, utterance) : kept
}

const nothingFound: Island[] = []
const guarding = bitsOf("guards", "answers")
const reading = bitsOf("resistance")
const isTalk = (one: Island) => (one.grammar & guarding) !== 0 || one.rule === "resistance.nothingShown"

class Guards {
  /** The phrases that can take something back: mostly none. */
  private readonly talk: readonly Island[]
  private readonly isElsewhere: boolean

  constructor(
    private readonly utterance: Utterance,
    private readonly clauses: Clauses,
    private readonly context: Context,
  ) {
    const mayTalk = (utterance.grammars & (guarding | reading)) !== 0
    this.talk = mayTalk ? utterance.islands.filter(isTalk) : nothingFound
    this.isElsewhere = isElsewhere(utterance)
  }

  judge(claim: Claim): Claim | null {
    const { utterance, clauses } = this
    if (!utterance.isClear && isChatter(claim, utterance, clauses)) return null
    const circuit = circuitOf(claim, utterance, clauses)
    if (circuit)
      return this.inSame("clause", claim, circuit) ? null : this.onlyAsked(claim, "that was said of a circuit")
    if (isOfLeads(claim, utterance, clauses) || isSupposed(claim, utterance, clauses)) return null
    if (this.talk.length > 0) {
      if (this.isPlanned(claim) || this.isOvertaken(claim)) return null
      if (this.hasException(claim))
        return this.doubt({ ...claim, value: null }, "some were left out, and the rest were not named")
    }
    if (this.isElsewhere || this.isConditional(claim)) return this.judgeHearsay(claim)
    if (isQuestion(claim, utterance, clauses, this.talk)) return this.onlyAsked(claim, "that sounded like a question")
    return claim.kind === "step_done" ? this.judgeStep(claim) : this.judgeValue(claim)
  }

  private judgeHearsay(claim: Claim): Claim | null {
    if (isContradicted(claim, this.utterance)) return this.doubt(claim, "two arrangements were said")
    return this.found("guards.condition").some(
      (one) => isPromised(one, this.utterance) || isSupposing(one, this.utterance),
    )
      ? null
      : this.onlyAsked(claim, "somebody else may have said so")
  }

  private judgeStep(claim: Claim): Claim | null {
    if (!claim.isBare && beginsAsking(claim, this.utterance, this.clauses)) return null
    if (this.isNegated(claim) || this.isUndone(claim)) return null
    return isUnclear(claim, this.utterance)
      ? this.doubt(claim, "something about it was not understood")
      : this.hedgedStep(claim)
  }

  private judgeValue(claim: Claim): Claim | null {
    if (this.talk.length > 0 && this.isVerdict(claim)) return null
    if (isOfSwitch(claim, this.utterance)) return this.onlyAsked(claim, "that is of a switch")
    const foreign =
      isOfSupply(claim, this.utterance) || isDoneBySomebody(claim, this.utterance)
        ? null
        : foreignSubject(claim, this.utterance, this.clauses)
    if (foreign === "object") return null
    const isRead = claim.kind === "resistance" && typeof claim.value === "number" && claim.value < 1
    if (foreign === "kind" || (foreign && isRead)) return this.doubt(claim, "that was said of something else")
    if (foreign) return this.onlyAsked(claim, "that was said of something else")
    const negation = this.negationOf(claim)
    if (negation === "before") return this.denied(claim)
    if (negation === "after") return null
    if (isReckoned(claim, this.utterance)) return this.doubt(claim, "that may be only a part of it")
    return isLeftOpen(claim, this.utterance) ? this.doubt(claim, "that was left open") : this.hedged(claim)
  }

  /** What was not plainly said is asked about when it was asked for, and else left alone. */
  private onlyAsked(claim: Claim, because: string): Claim | null {
    return this.isAsked(claim) ? this.doubt(claim, because) : null
  }

  /** "not sixteen" says nothing but what it is not; beside a value that is said to be right it is only its shadow. */
  private denied(claim: Claim): Claim | null {
    const kind =
      claim.kind === "field" && typeof claim.value === "number" && isSold(claim.value) ? "conductor_csa" : claim.kind
    if (kind === "field") return null
    const doubt = { candidates: [], because: "only what it is not was said" }
    return { ...claim, kind, value: null, isDenied: true, doubt }
  }

  private isAsked(claim: Claim): boolean {
    return (
      this.context.asked === claim.kind ||
      (this.context.asked === "confirm" && this.context.readback?.kind === claim.kind)
    )
  }

  private doubt(claim: Claim, because: string): Claim {
    if (claim.doubt) return claim
    return { ...claim, doubt: { candidates: claim.value === null ? [] : [claim.value], because } }
  }

  private found(rule: string): Island[] {
    return this.talk.length === 0 ? nothingFound : this.talk.filter((one) => one.rule === rule)
  }

  private inSame(part: "sentence" | "clause" | "segment", claim: Claim, island: Island): boolean {
    return this.clauses[part][claim.from] === this.clauses[part][island.from]
  }

  private isConditional(claim: Claim): boolean {
    return (
      this.found("guards.limit").some(
        (one) =>
          this.inSame("clause", claim, one) &&
          !isJudgement(one, this.utterance) &&
          !(claim.qualifier === ">" && /^(the )?(limit|max|most|tops|it goes|only goes)/.test(this.textOf(one))),
      ) ||
      this.found("guards.condition").some(
        (one) =>
          !isNoCondition(one, claim, this.utterance) &&
          this.inSame(reachesClause(one, this.utterance) ? "clause" : "sentence", claim, one),
      )
    )
  }

  /** "everything's labelled except the oil": of the rest nobody said what they are, and the oil is not done. */
  private hasException(claim: Claim): boolean {
    return this.found("guards.except").some((one) => this.inSame("sentence", claim, one) && one.from >= claim.to)
  }

  /** "I thought it was six but it's ten": only what was thought before falls. */
  private isOvertaken(claim: Claim): boolean {
    return [...this.found("guards.condition"), ...this.found("guards.limit")].some(
      (one) => this.inSame("clause", claim, one) && isOutdone(one, this.utterance),
    )
  }

  private isPlanned(claim: Claim): boolean {
    return this.found("guards.plan").some(
      (one) =>
        this.inSame("clause", claim, one) &&
        (claim.kind === "step_done" || one.from < claim.from) &&
        !isPast(one, this.utterance) &&
        !isDictating(one, this.utterance) &&
        !isUnchanged(one, claim, this.utterance) &&
        !(one.from >= claim.to && (isDuty(one, this.utterance) || isNextWork(one, this.utterance))),
    )
  }

  /** Words that deny what stands in their clause; "it's not" does so when it is no answer by itself. */
  private negators(claim: Claim): Island[] {
    const denials = this.found("answers.deny").filter(
      (one) => one.to < this.utterance.tokens.length && !isEdgeGap(this.utterance.tokens[one.to - 1]!.after),
    )
    const nots = [...this.found("guards.not"), ...this.found("resistance.nothingShown"), ...denials]
    return nots.filter((one) => mayDeny(one, claim, this.utterance))
  }

  /** "sixteen mil is too big judges a size and reports none. */
  private isVerdict(claim: Claim): boolean {
    return this.found("guards.undone").some(
      (one) => this.inSame("segment", claim, one) && one.from >= claim.to && /too|wrong|no good/.test(this.textOf(one)),
    )
  }

  private isNegated(claim: Claim): boolean {
    if (
      ["no", "nae", "zero", "without"].includes(this.utterance.words[claim.from - 1] ?? "") &&
      !this.isParted(claim.from)
    )
      return true
    // "nearly got the clamp on" is not on.
    const nearly = [
      ...this.found("guards.rounding"),
      ...this.found("answers.maybe").filter((one) => /less/.test(this.textOf(one))),
    ]
    if (nearly.some((one) => one.to <= claim.from && this.inSame("segment", claim, one))) return true
    return this.negators(claim).some((one) => {
      // "clamp fitted, not."
      if (one.to === this.utterance.tokens.length && this.textOf(one) === "not" && this.isParted(one.from)) return true
      if (this.inSame("segment", claim, one)) return true
      return this.inSame("clause", claim, one) && one.from < claim.from && !hasOwnSubject(claim, this.utterance)
    })
  }

  private isUndone(claim: Claim): boolean {
    const misplaced = this.found("answers.deny").filter((one) => /the wrong$/.test(this.textOf(one)))
    return [...this.found("guards.undone"), ...misplaced].some(
      (one) => this.inSame("sentence", claim, one) && (claim.from < one.from || this.inSame("segment", claim, one)),
    )
  }

  private negationOf(claim: Claim): "before" | "after" | null {
    if (this.talk.length === 0) return null
    const not = this.negators(claim).filter((one) => this.inSame("segment", claim, one) && !this.isRepairingNo(one))
    const isPlain = (one: Island) => /not|n't|nae|never|isn|no$|nowhere near/.test(this.textOf(one))
    if (not.some((one) => one.to <= claim.from && isPlain(one) && isSmallBetween(one.to, claim.from, this.utterance)))
      return "before"
    return not.some((one) => !(one.from >= claim.to && this.deniesNumber(one))) ? "after" : null
  }

  /** "fourteen not forty": the not is about the number behind it. */
  private deniesNumber(island: Island): boolean {
    return this.utterance.islands.some(
      (one) =>
        one.from >= island.to &&
        one.from <= island.to + 1 &&
        (hasTag(one, "n") || hasTag(one, "value") || hasTag(one, "item")),
    )
  }

  /** "no ten mil" repairs; "it's not ten mil" denies, and so does "it's no ten mil" where no is said for not. */
  private isRepairingNo(island: Island): boolean {
    return (
      island.rule === "answers.deny" &&
      !/not|n't|nae|^no way$|^nowhere near$|^(no )?(it's|that's|it is) no$/.test(this.textOf(island))
    )
  }

  private textOf(island: Island): string {
    return this.utterance.words.slice(island.from, island.to).join(" ")
  }

  private isParted(at: number): boolean {
    return at > 0 && isEdgeGap(this.utterance.tokens[at - 1]!.after)
  }

  /** "I think the label's on" has to be asked. */
  private hedgedStep(claim: Claim): Claim {
    const isHedged = this.found("guards.hedge").some((one) => this.inSame("clause", claim, one))
    return isHedged ? this.doubt(claim, "that was not sure") : claim
  }

  private hedged(claim: Claim): Claim {
    if (claim.kind === "service") return claim
    const isIsh =
      (this.utterance.traits & trait.ish) !== 0 && this.utterance.words.slice(claim.from, claim.to + 1).includes("ish")
    if (this.talk.length === 0 && !isIsh) return claim
    const loose = this.found("answers.maybe").filter((one) =>
      /prob|maybe|perhaps|think|suppose|guess|could|sure|know|should/.test(this.textOf(one)),
    )
    const isHedged = [...this.found("guards.hedge"), ...loose].some(
      (one) =>
        !isOfOtherField(one, claim, this.utterance) &&
        (this.inSame("clause", claim, one) || leadsIn(one, claim, this.utterance, this.clauses)),
    )
    if (isHedged) return this.doubt(claim, "that was not sure")
    const mayRound = claim.kind === "length" || claim.kind === "distance"
    const isRounded =
      !mayRound &&
      isMeasured(claim.kind) &&
      this.found("guards.rounding").some(
        (one) => this.inSame("segment", claim, one) || leadsIn(one, claim, this.utterance, this.clauses),
      )
    return isRounded || (isIsh && !mayRound) ? this.doubt(claim, "that was not exact") : claim
  }
}
