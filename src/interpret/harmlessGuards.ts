/** Phrases that look like a guard and, by the words beside them, take nothing back. */
import type { Claim } from "./Claim"
import type { Island, Utterance } from "./Utterance"
import { trait } from "./wordTraits"

const textOf = (island: Island, utterance: Utterance) => utterance.words.slice(island.from, island.to).join(" ")

/** "somebody's already put ten mil on" tells of work that is done; "somebody says" does not. */
export const isDoer = (island: Island, utterance: Utterance): boolean =>
  /^some(body|one)('s)?$/.test(textOf(island, utterance)) &&
  /^(has|have|already|put|fitted|used)$/.test(utterance.words[island.to] ?? "")

/** "I thought it was six but it's ten", "usually ten, but it's sixteen": only what was thought, or is usual, falls. */
export const isOutdone = (island: Island, utterance: Utterance): boolean =>
  /^((i )?thought|usually|normally|generally|typically|as a rule|as usual)$/.test(textOf(island, utterance)) &&
  utterance.words.some(
    (word, at) =>
      at >= island.to && word === "but" && /^(it's|it|that's|this|actually)$/.test(utterance.words[at + 1] ?? ""),
  )

/** "the village hall is TT": the supply's facts may be said of the building. */
export const isOfSupply = (claim: Claim, { entries, traits }: Utterance): boolean =>
  (traits & trait.premises) !== 0 &&
  /^(earthing_arrangement|fuse_rating|polarity|neutral_csa)$/.test(claim.kind) &&
  entries.some((entry, at) => at < claim.from && (entry.traits & trait.premises) !== 0)

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
