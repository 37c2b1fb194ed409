/**
 * Measures of a circuit behind the board: its loop, its conductors end to end, its insulation, its breaker.
 * None of our fields holds such a figure, and it must never stand as a bond's or as the supply's.
 */
import type { Claim } from "./Claim"
import type { Clauses } from "./Clauses"
import { bitsOf } from "./GrammarBits"
import { hasTag, type Island, type Utterance } from "./Utterance"

const quantities = bitsOf("quantity")
const measures: ReadonlySet<Claim["kind"]> = new Set([
  "resistance",
  "conductor_csa",
  "neutral_csa",
  "fuse_rating",
  "length",
  "field",
])

/**
 * The words for a circuit that the claim is said of, or null: before it in its sentence with no bonded part named between,
 * or behind it in its clause where no part is named before.
 */
export function circuitOf(claim: Claim, utterance: Utterance, { sentence, clause }: Clauses): Island | null {
  const { islands, grammars } = utterance
  if ((grammars & quantities) === 0 || !measures.has(claim.kind)) return null
  const circuits = islands.filter(
    (one) => one.rule === "quantity.circuit" && sentence[one.from] === sentence[claim.from],
  )
  if (circuits.length === 0) return null
  const part = islands.findLast(
    (one) => (one.rule === "parts.part" || one.rule === "parts.earthing") && one.from <= claim.from,
  )
  const before = circuits.findLast((one) => one.to <= claim.from)
  if (before) return part && part.from > before.from ? null : before
  const [behind] = circuits
  return !part && clause[behind!.from] === clause[claim.from] && !hasTag(behind!, "leads") ? behind! : null
}
