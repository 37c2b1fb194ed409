/** Phrases that look like a guard and, by the words beside them, take nothing back. */
import { type Claim, isMeasured } from "./Claim"
import type { Island, Utterance } from "./Utterance"
import { trait } from "./wordTraits"

const textOf = (island: Island, utterance: Utterance) => utterance.words.slice(island.from, island.to).join(" ")

/** "somebody's already put ten mil on" tells of work that is done; "somebody says" does not. */
const isDoer = (island: Island, utterance: Utterance): boolean =>
  /^some(body|one)('s)?$/.test(textOf(island, utterance)) &&
  /^(has|have|already|put|fitted|used|swapped|crossed|reversed|switched|flipped)$/.test(
    utterance.words[island.to] ?? "",
  )

const old =
  /^((i )?thought|usually|normally|generally|typically|as a rule|as usual|till|until|used to|yesterday|last (time|year|year's|week)|previous|previously|the old|(the )?drawing says|the drawing|on paper|regs say|book says|(drawings?|plans?|spec|schedule|book|sheet) (has|have|had) (it|that|them))$/
/** What is, set against what was: "but it's", "now it reads", "today I'm getting". */
const anew =
  /\b(but ((they've|they|we've|i've|he's|somebody's|it's been|been) (converted|changed|switched|moved|swapped|upgraded)|it's|it|that's|this|actually|what's|what is)|(now|today|here) (it's|it|that's|i'm|i|we're|we|she's|reads|reading|getting)|it's now|my (tape|meter|tester) (says|reads|shows|has)|the new (one|bond|cable)('s| is))\b/

/** "I thought it was six but it's ten", "till I cleaned it, now it's ten": only what was thought, or was, falls. */
export const isOutdone = (island: Island, utterance: Utterance): boolean =>
  old.test(textOf(island, utterance)) && anew.test(utterance.words.slice(island.to).join(" "))

/** "measured at twenty, once the floor was swept": what had to be done first was done. */
const isDoneFirst = (island: Island, claim: Claim, utterance: Utterance): boolean =>
  claim.kind !== "step_done" &&
  claim.to <= island.from &&
  /^(once|after)$/.test(textOf(island, utterance)) &&
  /\b(was|were|had|i'd|we'd)\b/.test(utterance.words.slice(island.to, island.to + 4).join(" "))

/** Whether the phrase that looks like a condition puts none on the claim. */
export const isNoCondition = (island: Island, claim: Claim, utterance: Utterance): boolean =>
  isDoer(island, utterance) ||
  isDoneFirst(island, claim, utterance) ||
  isFound(island, claim, utterance) ||
  (claim.to < island.from && isOfNext(island, utterance))

/** "clamp was already on when I came": found so, and not made to hang on it. */
const isFound = (island: Island, claim: Claim, utterance: Utterance): boolean =>
  claim.to <= island.from &&
  textOf(island, utterance) === "when" &&
  /^(i|we) (came|arrived|got (here|there)|turned up|started|opened (it|up))\b/.test(
    utterance.words.slice(island.to).join(" "),
  )

/** A condition that holds in its clause only: one outdone, or "TN-S, not TT like the old sheet says", which compares. */
export const reachesClause = (island: Island, utterance: Utterance): boolean =>
  isOutdone(island, utterance) || /^(like|than)$/.test(utterance.words[island.from - 1] ?? "")

/** "… and when I've got the clamp on I'll …": what stands before the "and" is told already. */
const isOfNext = (island: Island, utterance: Utterance): boolean =>
  utterance.words[island.from - 1] === "and" &&
  /^(if|when|once|as soon as)$/.test(textOf(island, utterance)) &&
  isPromised(island, utterance)

/** "if it goes over I'll swap the leads": what will be done then. */
export const isPromised = (island: Island, utterance: Utterance): boolean =>
  /^(if|when|once|as soon as)$/.test(textOf(island, utterance)) &&
  /\b(i'll|we'll|(i'm|we're) (changing|swapping|replacing|redoing|upgrading|ripping|not))\b/.test(
    utterance.words.slice(island.to).join(" "),
  )

/** "you can put down ten square": says what to write. */
export const isDictating = (island: Island, utterance: Utterance): boolean =>
  /^can$/.test(textOf(island, utterance)) &&
  /^(you|y'all|ye|yous)$/.test(utterance.words[island.from - 1] ?? "") &&
  /^(put (it )?down|write down|mark down|jot down|log|record)\b/.test(utterance.words.slice(island.to).join(" "))

/** "the village hall is TT": the supply's facts may be said of the building. */
export const isOfSupply = (claim: Claim, { entries, traits }: Utterance): boolean =>
  (traits & trait.premises) !== 0 &&
  /^(earthing_arrangement|fuse_rating|polarity|neutral_csa)$/.test(claim.kind) &&
  entries.some((entry, at) => at < claim.from && (entry.traits & trait.premises) !== 0)

/** "what if it's TT", "it'd be twelve metres if I went round", "regs want it within six hundred": nobody says that it is. */
export const isSupposing = (island: Island, utterance: Utterance): boolean => {
  const text = textOf(island, utterance)
  const before = utterance.words.slice(0, island.from).join(" ")
  if (text === "if")
    return (
      /\bwhat$/.test(before) ||
      (/\b(it'd|that'd|it would|that would|would) be\b/.test(before) &&
        /^(i|we|they|you) (went|ran|took|did|had|came|put|used|could)\b/.test(
          utterance.words.slice(island.to).join(" "),
        ))
    )
  return /^(regs|regulations|book|table|standard|guide|manual|rules|rule) (wants?|asks for)$/.test(text)
}

/** Whether a not stands beside the claim, and is not said of another part. */
export const mayDeny = (island: Island, claim: Claim, utterance: Utterance): boolean =>
  (island.to <= claim.from || island.from >= claim.to) && !isOfOtherPart(island, claim, utterance)

/** "water sixteen mil gas ten mil oil not done": the not is said of the part right before it, and the value of another. */
const isOfOtherPart = (island: Island, claim: Claim, { islands, words }: Utterance): boolean => {
  if (island.from < claim.to) return false
  const part = islands.find((one) => one.rule === "parts.part" && one.to === island.from && one.from >= claim.to)
  return (
    part !== undefined &&
    !/^(on|for|to|the|of|in|and)$/.test(words[part.from - 1] ?? "") &&
    islands.some((one) => one.rule === "parts.part" && one.to <= claim.from)
  )
}

/** "no, make that the water, still ten mil": the value is what it was; "still ten metres to pull" is to be done. */
export const isUnchanged = (island: Island, claim: Claim, utterance: Utterance): boolean =>
  textOf(island, utterance) === "still" &&
  isMeasured(claim.kind) &&
  island.to === claim.from &&
  utterance.words[claim.to] !== "to"

/** "cleaned the pipe like you're supposed to": done as it should be. */
export const isDuty = (island: Island, utterance: Utterance): boolean =>
  /\b(like|as|just as) (i|you|we|you're|i'm|we're|one|it)$/.test(
    utterance.words.slice(Math.max(0, island.from - 3), island.from).join(" "),
  )

/** "nought point nought three, which passes" judges what was read; "nought point nought five passes" tells a rule. */
export const isJudgement = (island: Island, utterance: Utterance): boolean =>
  textOf(island, utterance) === "passes" &&
  /^(which|that|it|and|so|she|this)$/.test(utterance.words[island.from - 1] ?? "")

/** "then I took one end off" tells what was done, "then I take" what will be. */
export const isPast = (island: Island, utterance: Utterance): boolean =>
  textOf(island, utterance) === "then i" &&
  /^(took|put|got|did|had|went|ran|\w+ed)$/.test(utterance.words[island.to] ?? "")

/** "clamp's on and I'll do the label": the plan is about what comes next. */
export const isNextWork = (island: Island, utterance: Utterance): boolean =>
  utterance.words[island.from - 1] === "and" && /^(i'll|we'll|then i|gonna|going to)$/.test(textOf(island, utterance))

/** "some clown's swapped line and neutral": who did it is no owner of what is read. */
export const isDoneBySomebody = ({ kind, from }: Claim, { words }: Utterance): boolean =>
  kind === "polarity" && /^(swapped|reversed|crossed|transposed|flipped|switched)$/.test(words[from]!)

const fieldNames: Partial<Record<Claim["kind"], RegExp>> = {
  conductor_csa: /size|thick/,
  length: /length|long/,
  distance: /distance|far/,
  resistance: /reading|resistance/,
}

/** "ten mil, don't know the length yet": the doubt is about something else. */
export const isOfOtherField = (island: Island, claim: Claim, { words }: Utterance): boolean => {
  const about =
    /^(?:(?:the|its|what|how|what the|about the) ?)*(length|long|size|thick|distance|far|reading|resistance)\b/.exec(
      words.slice(island.to, island.to + 4).join(" "),
    )
  const own = fieldNames[claim.kind]
  return about !== null && own !== undefined && claim.to <= island.from && !own.test(about[1]!)
}
