/**
 * Takes back what was only wished, asked, planned, doubted or denied. When in doubt a step is dropped: a step that is
 * logged but not done is the worst that can happen here.
 */
import type { Context } from "../facts/Interpretation"
import { type Claim, isMeasured } from "./Claim"
import type { Clauses } from "./Clauses"
import type { Island, Utterance } from "./Utterance"

/** Claims that stand after all guards; some come back with a doubt. */
export function applyGuards(
  claims: readonly Claim[],
  utterance: Utterance,
  clauses: Clauses,
  context: Context,
): Claim[] {
  const guards = new Guards(utterance, clauses, context)
  return claims.flatMap((claim) => guards.judge(claim))
}

class Guards {
  constructor(
    private readonly utterance: Utterance,
    private readonly clauses: Clauses,
    private readonly context: Context,
  ) {}

  judge(claim: Claim): Claim[] {
    if (this.isChatter(claim) || this.isConditional(claim) || this.isPlanned(claim)) return []
    if (this.isQuestion(claim)) return this.isAsked(claim) ? [this.doubt(claim, "that sounded like a question")] : []
    if (claim.kind === "step_done") return this.isNegated(claim) || this.isUndone(claim) ? [] : [claim]
    const negation = this.negationOf(claim)
    if (negation === "before") return [{ ...claim, doubt: { candidates: [], because: "only what it is not was said" } }]
    if (negation === "after") return []
    return [this.hedged(claim)]
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
    return this.utterance.islands.filter((one) => one.rule === rule)
  }

  private inSame(part: "sentence" | "clause" | "segment", claim: Claim, island: Island): boolean {
    return this.clauses[part][claim.from] === this.clauses[part][island.from]
  }

  private isChatter(claim: Claim): boolean {
    return this.utterance.leftovers.some(
      (leftover, at) =>
        leftover === "chatter" && (claim.isBare || this.clauses.clause[at] === this.clauses.clause[claim.from]),
    )
  }

  private isConditional(claim: Claim): boolean {
    return this.found("guards.condition").some((one) => this.inSame("sentence", claim, one))
  }

  private isPlanned(claim: Claim): boolean {
    return this.found("guards.plan").some(
      (one) => this.inSame("clause", claim, one) && (claim.kind === "step_done" || one.from < claim.from),
    )
  }

  private isQuestion(claim: Claim): boolean {
    if (this.clauses.questions.has(this.clauses.sentence[claim.from]!)) return true
    return this.found("guards.question").some((one) => this.inSame("sentence", claim, one) && this.opensClause(one))
  }

  /** A question begins its clause; "that is the leads nulled" is none. */
  private opensClause(island: Island): boolean {
    if (this.utterance.words.slice(island.from, island.to).join(" ") === "or not") return true
    for (let at = island.from - 1; at >= 0 && this.clauses.clause[at] === this.clauses.clause[island.from]; at -= 1) {
      if (this.utterance.leftovers[at] !== "skippable")
        return ["and", "so", "but", "well"].includes(this.utterance.words[at]!)
      if (["that", "this", "it", "it's", "that's", "these", "those"].includes(this.utterance.words[at]!)) return false
    }
    return true
  }

  private isNegated(claim: Claim): boolean {
    return this.found("guards.not").some((one) => {
      if (this.inSame("segment", claim, one)) return true
      return this.inSame("clause", claim, one) && one.from < claim.from && !this.hasOwnSubject(claim)
    })
  }

  /** "… and the label is on" starts afresh; "… and fitted the label" goes on under the same not. */
  private hasOwnSubject(claim: Claim): boolean {
    const before = this.utterance.words[claim.from - 1]
    return before !== undefined && ["the", "a", "my", "that", "is"].includes(before)
  }

  private isUndone(claim: Claim): boolean {
    return this.found("guards.undone").some(
      (one) => this.inSame("sentence", claim, one) && (claim.from < one.from || this.inSame("segment", claim, one)),
    )
  }

  private negationOf(claim: Claim): "before" | "after" | null {
    const not = this.found("guards.not").filter((one) => this.inSame("segment", claim, one))
    const isPlain = (one: Island) =>
      /not|n't|nae|never|isn|no$/.test(this.utterance.words.slice(one.from, one.to).join(" "))
    if (not.some((one) => one.to <= claim.from && isPlain(one) && this.onlySmallBetween(one.to, claim.from)))
      return "before"
    if (not.some((one) => one.from >= claim.to || !isPlain(one))) return "after"
    return not.length > 0 ? "after" : null
  }

  private onlySmallBetween(from: number, to: number): boolean {
    return this.utterance.leftovers
      .slice(from, to)
      .every((leftover) => leftover === "skippable" || leftover === "neutral")
  }

  private hedged(claim: Claim): Claim {
    if (claim.kind === "service") return claim
    const isHedged = this.found("guards.hedge").some(
      (one) => this.inSame("clause", claim, one) || this.leadsIn(one, claim),
    )
    if (isHedged) return this.doubt(claim, "that was not sure")
    const mayRound = claim.kind === "length" || claim.kind === "distance"
    const isRounded =
      !mayRound &&
      isMeasured(claim.kind) &&
      this.found("guards.rounding").some((one) => this.inSame("segment", claim, one))
    return isRounded ? this.doubt(claim, "that was not exact") : claim
  }

  /** "I think, sixteen": a comma after the hedge does not free the value. */
  private leadsIn(island: Island, claim: Claim): boolean {
    return island.to === claim.from && this.inSame("sentence", claim, island)
  }
}
