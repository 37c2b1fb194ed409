/** Whether a reading is of the test leads: what was nulled away, and never a bond's. */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { bitsOf } from "./GrammarBits"
import { tagValue, type Utterance } from "./Utterance"

const things = bitsOf("steps")

/** True for "leads came to nought point two six"; false where the leads are held open, which is a reading of their own. */
export function isOfLeads(claim: Claim, utterance: Utterance, clauses: Clauses): boolean {
  const { islands, words, grammars } = utterance
  if (claim.kind !== "resistance" || (grammars & things) === 0) return false
  if (islands.some((one) => one.rule === "resistance.openLeads")) return false
  return islands.some(
    (one) =>
      one.rule === "steps.thing" &&
      tagValue(one, "thing") === "leads" &&
      !/\b(with|includes|including|plus)( the| my)?$/.test(
        words.slice(Math.max(0, one.from - 2), one.from).join(" "),
      ) &&
      (one.to <= claim.from || /^(on|in|for|of)$/.test(words[claim.to] ?? "")) &&
      clauses.clause[claim.from] === clauses.clause[one.from] &&
      !/meter|tester/.test(words.slice(one.from, one.to).join(" ")),
  )
}
