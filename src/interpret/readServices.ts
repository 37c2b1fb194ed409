/**
 * Which parts an utterance picks: those its values belong to, and those it only names in order to go on with them. A
 * name that is merely close to a part's is asked about, never taken.
 */
import type { Fact } from "../facts/Fact"
import type { Ask, Context } from "../facts/Interpretation"
import { isBond } from "../facts/Item"
import { repairMarks } from "./applyRepairs"
import type { Mention } from "./assignSubjects"
import type { Claim, ClaimDoubt } from "./Claim"
import type { Clauses } from "./Clauses"
import type { Language } from "./Language"
import { openNearParts } from "./nearParts"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

interface Site {
  utterance: Utterance
  clauses: Clauses
  mentions: readonly Mention[]
  claims: readonly Claim[]
  context: Context
}

const nearParts = openNearParts()

/** Service facts, and a question when a name was only nearly heard. */
export function readServices(site: Site): { facts: Fact[]; ask: Ask | null } {
  if (site.mentions.length === 0) return { facts: [], ask: askNear(site) }
  const bonds = site.mentions.filter((one) => isBond(one.item))
  const picked = bonds.filter((one) => site.claims.some((claim) => claim.subject === one.item) || isPick(site, one))
  // Of parts only named, the last is the one gone on with; a list ("water, gas and oil") is taken whole.
  const lastGroup = picked.at(-1)?.group
  const kept = site.claims.length > 0 ? picked : picked.filter((one) => one.group === lastGroup)
  const items = [...new Set(kept.map((one) => one.item))]
  if (isEither(site, kept))
    return { facts: [], ask: { kind: "service", candidates: items, because: "it was not said which of them" } }
  const facts = items.map((item): Fact => ({ kind: "service", value: item }))
  return { facts, ask: items.length === 0 ? askNear(site) : null }
}

/** "gas or oil, can't tell from here": one of two, and nobody said which. */
const isEither = ({ utterance, mentions, claims }: Site, kept: readonly Mention[]): boolean =>
  kept.length > 0 &&
  claims.length === 0 &&
  mentions.some((one, at) => at > 0 && mentions[at - 1]!.to === one.from - 1 && utterance.words[one.from - 1] === "or")

/** Words that may stand beside a part that is only picked. */
const pickWords = new Set(
  "now next start starting with the on onto to move moving right ok okay then so and for at first last go going let's we're i'm over back well um er uh is it's here's this we do doing i'll er erm begin beginning now's a also another one done you have it'd be i'm at stood standing sat knelt kneeling aye yes yeah mate please here there it".split(
    " ",
  ),
)

/** "the oil line behind the ovens": where the words end that tell where the part is. */
function placeBehind({ to }: Mention, { words, tokens, islands }: Utterance): number {
  const isPlace = /^(behind|in|on|by|under|over|beside|near|outside|above|below|at|for) (the|this|that)$/.test(
    words.slice(to, to + 2).join(" "),
  )
  if (!isPlace || tokens[to - 1]!.after !== "space") return to
  const pause = tokens.findIndex((token, at) => at >= to && isEdgeGap(token.after))
  const end = Math.min(pause === -1 ? words.length : pause + 1, to + 5)
  const next = islands.find((one) => one.from > to && one.from < end)
  return next ? next.from : end
}

/** A clause that names a part and nothing else of weight takes it up. */
function isPick({ utterance, clauses, claims, context }: Site, mention: Mention): boolean {
  const isIntent = (from: number, to: number) =>
    /^(let's|i'll|we'll|going to|next is|next up|doing|starting)$/.test(utterance.words.slice(from, to).join(" "))
  const marks = repairMarks(utterance)
  const guards = utterance.islands.filter(
    (one) =>
      !isIntent(one.from, one.to) &&
      // "water, no, gas": the no took back what stood before it.
      !(marks.includes(one) && one.from > 0 && one.to <= mention.from) &&
      /^(guards\.(not|plan|condition|question|undone|absent)|parts\.notPart|answers\.(deny|undo)|commands\.what)/.test(
        one.rule,
      ),
  )
  if (guards.length > 0 || clauses.questions.size > 0) return false
  const inClause = (at: number) => clauses.clause[at] === clauses.clause[mention.from]
  const place = placeBehind(mention, utterance)
  const isBehindRoom = /^(room|hall|kitchen|shop)$/.test(utterance.words[mention.from - 1] ?? "")
  const isOutside = (at: number) => (at < mention.to || at >= place) && !(isBehindRoom && at < mention.from)
  const strange = utterance.leftovers.filter(
    (one, at) =>
      (one === "unknown" || one === "chatter") && isOutside(at) && (inClause(at) || context.asked !== "service"),
  )
  if (utterance.leftovers.includes("chatter")) return false
  if (utterance.islands.some((one) => one.rule === "quantity.same")) return strange.length === 0
  const isPlain = utterance.words.every(
    (word, at) => !inClause(at) || !isOutside(at) || utterance.leftovers[at] === null || pickWords.has(word),
  )
  if (!isPlain && context.asked !== "service") return false
  if (isMovingOn(mention, { utterance, clauses })) return true
  return claims.length === 0 ? strange.length === 0 : strange.length <= 1 && claims.some((claim) => claim.doubt)
}

/** "…, on to the gas": the last clause says outright that the work goes on there. */
function isMovingOn({ from, to }: Mention, { utterance, clauses }: Pick<Site, "utterance" | "clauses">): boolean {
  const first = clauses.clause.indexOf(clauses.clause[from]!)
  const lead = utterance.words.slice(first, from).join(" ")
  return (
    to === utterance.words.length &&
    /^(and |then |now |right )*(on to|onto|over to|moving (on )?to|(starting|start|beginning|kicking off) (with|on|at))( the)?$/.test(
      lead,
    )
  )
}

/** "glass bond in ten": a word that sounds like a part stands where the part should: which part is asked. */
export function withNearPart(claim: Claim, utterance: Utterance, { book }: Language): Claim {
  if (claim.doubt || claim.subject === "earthing_conductor") return claim
  const behind = partBehind(claim, utterance, book)
  if (behind) return { ...claim, doubt: behind }
  if (!utterance.entries.some((one) => one.mayBePart)) return claim
  const found = utterance.words.flatMap((word, at) => {
    const name = word.replace(/'s$/, "")
    const next = utterance.words[at + 1] ?? ""
    const isBond = /^(bond|bonding|pipe|pipes|line|main|clamp|clamp's|label|label's)$/.test(next)
    const isFree = utterance.leftovers[at] !== null && (/^(is|in|was)$/.test(next) || word.endsWith("'s"))
    const pair = `${utterance.words[at - 1] ?? ""} ${name}`
    if (at >= claim.from || !(isBond || isFree)) return []
    return [pair, name].filter((one) => book.soundAlikes.part.has(one))
  })[0]
  const part = found && book.soundAlikes.part.get(found)
  return part
    ? {
        ...claim,
        doubt: { candidates: [part.meant], because: "that was close to the name of a part", kind: "service" },
      }
    : claim
}

/** "on the what are", "on the widget": a part is named behind the value, and it is not one we know. */
function partBehind(claim: Claim, utterance: Utterance, book: Language["book"]): ClaimDoubt | null {
  const { words, entries, leftovers } = utterance
  if (!/^(on|for)$/.test(words[claim.to] ?? "")) return null
  const from = claim.to + (/^(the|my|a)$/.test(words[claim.to + 1] ?? "") ? 2 : 1)
  const known = book.soundAlikes.part.get(words.slice(from).join(" ")) ?? book.soundAlikes.part.get(words[from] ?? "")
  if (!known && leftovers[from] !== "unknown") return null
  // Of anything but a size, only a name that parts are given tells whose it is.
  if (
    claim.kind !== "conductor_csa" &&
    !entries.slice(from, from + 3).some(({ traits }) => (traits & trait.partHead) !== 0)
  )
    return null
  return { candidates: known ? [known.meant] : [], because: "the part was not understood", kind: "service" }
}

/** An answer that only sounds like a part's name, or points at a part without a name. */
export function askPart(utterance: Utterance, context: Context, { book }: Language): Ask | null {
  if (context.asked !== "service") return null
  const text = utterance.words.join(" ")
  const known = book.soundAlikes.part.get(text)
  if (known) return { kind: "service", candidates: [known.meant], because: "that was close to the name of a part" }
  if (
    /^(it's |is )?(the |that |this )?([\w-]+ ){0,3}(pipe|one|bond|line|main|tap|corner|cupboard)( (by|in|at|near|under|behind|beside|on|over|next|outside|inside|above|below) .*)?$/.test(
      text,
    ) &&
    !utterance.islands.some((one) => one.rule.startsWith("parts."))
  )
    return { kind: "service", because: "the part was not named" }
  return null
}

function askNear({ utterance, claims, context }: Site): Ask | null {
  if (context.asked !== "service" || claims.length > 0) return null
  const words = utterance.words.filter(
    (_, at) => utterance.leftovers[at] === "unknown" || utterance.leftovers[at] === "neutral",
  )
  if (words.length === 0 || words.length > 2) return null
  const found = nearParts(words.join(" "))
  if (found.length === 0) return null
  return {
    kind: "service",
    candidates: found.slice(0, 3),
    because: "that was close to the name of a part",
  }
}
