/** Steps that the words claim are done: whole phrases, answers to an open step question, and "both done" for things just named. */
import type { Step } from "../facts/Fact"
import type { Context } from "../facts/Interpretation"
import type { Claim } from "./Claim"
import { bitsOf } from "./GrammarBits"
import { isEdgeGap } from "./Token"
import { hasTag, type Island, tagValue, type Utterance } from "./Utterance"

const steps = bitsOf("steps", "tasks")

const stepOfThing: Readonly<Record<string, Step>> = { clamp: "clamp_fitted", label: "label_fitted" }

export const askedStep = (context: Context): Step | null =>
  context.asked?.startsWith("step:") ? (context.asked.slice("step:".length) as Step) : null

/** Claims of steps, in order. */
export function claimSteps(utterance: Utterance, context: Context): Claim[] {
  const claims: Claim[] = []
  if ((utterance.grammars & steps) !== 0)
    for (const island of utterance.islands)
      if ((island.grammar & steps) !== 0) claims.push(...claimOf(utterance, island, context))
  // "dead" alone answers half of the question.
  if (claims.length > 0 || askedStep(context) !== "isolated_proved_dead") return claims
  const at = utterance.words.indexOf("dead")
  if (at === -1) return claims
  const doubt = { candidates: ["isolated_proved_dead"], because: "it was not said to be proved dead" }
  return [{ kind: "step_done", value: "isolated_proved_dead", from: at, to: at + 1, isBare: false, doubt }]
}

function claimOf(utterance: Utterance, island: Island, context: Context): Claim[] {
  const step = tagValue(island, "step") as Step | undefined
  const asked = askedStep(context)
  if (step && isOfElse(utterance, island, step, asked)) return []
  if (step) return isMeant(utterance, island) ? [...withPartner(utterance, island), claimStep(island, step, asked)] : []
  const doubtful = tagValue(island, "step?") as Step | undefined
  if (doubtful && isOfRoom(utterance, island)) return []
  if (doubtful) return claimIsolation(utterance, island, doubtful)
  if (island.rule === "steps.powerBack") return utterance.isClear ? [claimLiveAgain(island)] : []
  if (island.rule === "steps.endBack") return [claimEndBack(island, asked)]
  if (island.rule === "tasks.testerProved") return [claimProving(utterance, island)]
  if (island.rule === "steps.nulledAlone")
    return island.doubt > 0 && asked !== "leads_nulled" ? [] : claimNulled(utterance, island, asked)
  if (island.rule === "steps.done") return claimDone(utterance, island, asked)
  return []
}

/** A phrase that reports the step only beside other words, and a clamp that is the supplier's on the sheath. */
function isOfElse(utterance: Utterance, island: Island, step: Step, asked: Step | null): boolean {
  const { words } = utterance
  if (step === "clamp_fitted" && words.includes("sheath")) return true
  // "proving unit before, proving unit after": only with its "dead", and only both together.
  if (hasTag(island, "routine")) return !(words.includes("before") && words.includes("after") && saysDead(utterance))
  // "finished with the clamp meter"
  if (step === "clamp_fitted" && /^meters?('s)?$/.test(words[island.to] ?? "")) return true
  if (asked === step) return false
  if (hasTag(island, "ifAsked")) return true
  if (hasTag(island, "ofDead")) return !words.includes("dead") && !words.includes("she's")
  return hasTag(island, "ofClamp") && !isClampWork(utterance, island)
}

/** "dead, …", "it's dead": said of what was tested; "battery's dead" and "not dead" are not. */
const saysDead = ({ words, tokens }: Utterance): boolean =>
  words.some(
    (word, at) =>
      word === "dead" &&
      (at === 0 ||
        isEdgeGap(tokens[at - 1]!.after) ||
        /^(it's|that's|she's|all|proved|tested|everything|both|and|they're)$/.test(words[at - 1]!)),
  )

/** "cleaned, clamped, tagged": beside work on the clamp a tag is its label; beside an isolator it is none. */
const isClampWork = (utterance: Utterance, { from }: Island): boolean =>
  utterance.islands.some(
    (one) => one.to <= from && /^(clamp_fitted|pipe_cleaned)$/.test(tagValue(one, "step") ?? ""),
  ) && !utterance.islands.some((one) => one.rule === "steps.isolatedOnly")

/** "clamp and label both on": the thing before the "and" shares the verb. */
function withPartner(utterance: Utterance, island: Island): Claim[] {
  if (!/clamp|label/.test(tagValue(island, "step") ?? "") || utterance.words[island.from - 1] !== "and") return []
  const partner = utterance.islands.find((one) => one.rule === "steps.thing" && one.to === island.from - 1)
  const step = partner && stepOfThing[tagValue(partner, "thing") ?? ""]
  return partner && step ? [{ kind: "step_done", value: step, from: partner.from, to: island.to, isBare: false }] : []
}

/** What a clamp or label may be on for the step to be done. */
const surfaces = new Set(
  "it there pipe pipework riser incomer supply intake line main mains tube end both all them now tight properly and with too as beam stanchion girder column joist".split(
    " ",
  ),
)

/** Small words that may follow "on" before something more is said. */
const leadsOn = new Set("at about from off past above below near beside by since in for to one".split(" "))

/** "label on the cutout says PME": a label of the supplier's, that is read. */
function isReadOff({ words, tokens }: Utterance, from: number): boolean {
  const pause = tokens.findIndex((token, at) => at >= from - 1 && isEdgeGap(token.after))
  return words
    .slice(from, pause === -1 ? from + 6 : pause + 1)
    .some((word) => /^(says|reads|saying|said|states)$/.test(word))
}

/** "clamp is on the wrong side", "on the floor": a phrase that ends in "on" is a step only where a part or pipe follows. */
function isMeant(utterance: Utterance, island: Island): boolean {
  if (!hasTag(island, "onto")) return true
  if (isReadOff(utterance, island.to)) return false
  let hasArticle = false
  for (let at = island.to; at < utterance.tokens.length; at += 1) {
    if (utterance.tokens[at - 1]!.after !== "space") return true
    const next = utterance.islands.find((one) => one.from <= at && at < one.to)
    if (next) return !/^(guards\.undone|parts\.notPart|quantity|supply\.fuseAlone)/.test(next.rule)
    const leftover = utterance.leftovers[at]
    if (leftover === "unknown" || leftover === "chatter") return false
    const word = utterance.words[at]!
    if (surfaces.has(word) || /^(but|because|cos|although|so|then|i|i've|it's|that's)$/.test(word)) return true
    if (/^(by|near|beside|above|below|behind|past|under)$/.test(word) && !hasArticle) return true
    const isArticle = ["the", "a", "my", "this", "that", "its", "our"].includes(word)
    if (hasArticle || (leftover === "neutral" && !isArticle && !leadsOn.has(word))) return false
    hasArticle ||= isArticle
  }
  return true
}

function claimStep(island: Island, step: Step, asked: Step | null): Claim {
  const isAllowed = island.doubt === 0 || (island.doubt === 1 && asked === step)
  const claim: Claim = { kind: "step_done", value: step, from: island.from, to: island.to, isBare: false }
  return isAllowed ? claim : { ...claim, doubt: { candidates: [step], because: "a word may have been misheard" } }
}

/** Isolated or locked off is not proved dead, unless the same breath says so. */
function claimIsolation(utterance: Utterance, island: Island, step: Step): Claim[] {
  const isProved = utterance.islands.some((one) => tagValue(one, "step") === step || isProof(utterance, one))
  if (isProved) return []
  const doubt = { candidates: [step], because: "it was not said to be proved dead" }
  return [{ kind: "step_done", value: step, from: island.from, to: island.to, isBare: false, doubt }]
}

/** "isolated, proved", "that's dead, proved": what is proved was named right before the pause. */
function isProof({ words, islands }: Utterance, { rule, from, to }: Island): boolean {
  if (rule !== "steps.done" || words.slice(from, to).join(" ") !== "proved") return false
  const before = words[from - 1] === "and" ? from - 1 : from
  return words[before - 1] === "dead" || islands.some((one) => one.rule === "steps.isolatedOnly" && one.to === before)
}

/** "the cupboard's padlocked": what is locked is no circuit. */
const isOfRoom = ({ words }: Utterance, { from }: Island): boolean =>
  /^(padlocked|locked)/.test(words[from]!) &&
  /^(cupboard|door|gate|room|box|cabinet|hatch|shed|garage|cellar|yard|site)('s)?$/.test(
    words[from - 1] === "is" || words[from - 1] === "was" ? (words[from - 2] ?? "") : (words[from - 1] ?? ""),
  )

/** "power back on": whether what was proved dead still is. */
function claimLiveAgain({ from, to }: Island): Claim {
  const doubt = { candidates: ["isolated_proved_dead"], because: "the power was said to be on again" }
  return { kind: "step_done", value: "isolated_proved_dead", from, to, isBare: false, doubt }
}

/** "put it back on" is the step at the terminal only where that was asked; an end may be back at the clamp too. */
function claimEndBack(island: Island, asked: Step | null): Claim {
  const value = "connected_to_met"
  const claim: Claim = { kind: "step_done", value, from: island.from, to: island.to, isBare: false }
  return asked === value ? claim : { ...claim, doubt: { candidates: [value], because: "it was not said where" } }
}

/**
 * The tester is proved twice, before and after the test for dead. Told in order with that test, the order says which;
 * else it has to be asked.
 */
function claimProving(utterance: Utterance, island: Island): Claim {
  const claim: Claim = { kind: "step_done", value: null, from: island.from, to: island.to, isBare: false }
  const dead = utterance.islands.find((one) => tagValue(one, "step") === "isolated_proved_dead")
  if (dead) return { ...claim, value: dead.from > island.from ? "tester_proved_before" : "tester_proved_after" }
  const candidates = ["tester_proved_before", "tester_proved_after"]
  return { ...claim, doubt: { candidates, because: "before or after was not said" } }
}

/** "leads were nought point four, they're nulled now": what is nulled was named before. */
const isOfLeads = ({ islands, words }: Utterance, { from }: Island): boolean =>
  /^(they're|they|are|were|now|yes|yeah|aye|yep)$/.test(words[from - 1] ?? "") &&
  islands.some((one) => one.to <= from && (tagValue(one, "thing") === "leads" || one.rule === "steps.leadsNulled"))

function claimNulled(utterance: Utterance, island: Island, asked: Step | null): Claim[] {
  const claim: Claim = { kind: "step_done", value: "leads_nulled", from: island.from, to: island.to, isBare: false }
  // "isolated, proved, clamp on, nulled": in a list of steps it can only be the leads.
  const isListed = utterance.islands.some((one) => one.to <= island.from && hasTag(one, "step"))
  if (asked === "leads_nulled" || isListed || isOfLeads(utterance, island)) return [claim]
  return [{ ...claim, doubt: { candidates: ["leads_nulled"], because: "it was not said what was nulled" } }]
}

/** "done" answers the step that was asked, or the clamp and label just pointed at. */
function claimDone(utterance: Utterance, island: Island, asked: Step | null): Claim[] {
  const text = utterance.words.slice(island.from, island.to).join(" ")
  if (!asked && /^cleaned/.test(text) && utterance.islands.some((one) => tagValue(one, "step") !== undefined))
    return [{ kind: "step_done", value: "pipe_cleaned", from: island.from, to: island.to, isBare: false }]
  if (isProof(utterance, island))
    return [{ kind: "step_done", value: "isolated_proved_dead", from: island.from, to: island.to, isBare: false }]
  if (asked)
    return isLoose(text, asked) ||
      isOfOtherThing(utterance, island, asked) ||
      !(isShort(utterance) || isAllTheSame(utterance, island))
      ? []
      : [{ kind: "step_done", value: asked, from: island.from, to: island.to, isBare: true }]
  const things = utterance.islands.filter(
    (one) => one.to <= island.from && (one.rule === "steps.thing" || (hasTag(one, "onto") && !isMeant(utterance, one))),
  )
  if (/^(in|on|off)$/.test(text)) return []
  return things.flatMap((thing) => {
    const step = stepOfThing[tagValue(thing, "thing") ?? ""] ?? tagValue(thing, "step")
    return step ? [{ kind: "step_done", value: step, from: island.from, to: island.to, isBare: false } as Claim] : []
  })
}

/** "done the leads" while the clamp is asked for: the thing behind the word is another. */
function isOfOtherThing({ islands, words }: Utterance, { to }: Island, asked: Step): boolean {
  const thing = islands.find((one) => one.rule === "steps.thing" && one.from >= to && one.from <= to + 1)
  const isBehind = thing && words.slice(to, thing.from).every((word) => /^(the|a|my|that)$/.test(word))
  return isBehind === true && !asked.startsWith(tagValue(thing!, "thing") ?? "-")
}

/** "didn't think I'd get that clamp on but it's on": what was feared stands before the "but", what is behind it. */
const isAllTheSame = ({ words }: Utterance, { from, to }: Island): boolean =>
  /\bbut( now)? (it's|it is|she's|they're|they are|that's) \w+( up| down| now)*$/.test(words.join(" ")) &&
  words.slice(to).every((word) => word === "now") &&
  words.lastIndexOf("but") < from

/** Words that may stand beside an answer to a step question. */
const smallWords = new Set(
  "it it's that that's this she she's he they them those i i've we've we did do and yes yeah aye yep oh so well done got no one job all of ta tis 'tis em 'em you know been your it'll that'll me you're they're course".split(
    " ",
  ),
)

/** "on" in a longer sentence is no answer: "room for one more on top". */
const isShort = (utterance: Utterance): boolean =>
  utterance.leftovers.every((one, at) => one === null || one === "skippable" || smallWords.has(utterance.words[at]!))

/** Whether the word says something else than the step asked: "on" does not say that leads are nulled. */
function isLoose(text: string, asked: Step): boolean {
  const fits: Readonly<Record<string, readonly Step[]>> = {
    on: ["clamp_fitted", "label_fitted"],
    off: ["one_end_disconnected"],
    in: ["connected_to_met"],
    fitted: ["clamp_fitted", "label_fitted"],
    nulled: ["leads_nulled"],
    zeroed: ["leads_nulled"],
    cleaned: ["pipe_cleaned"],
    clean: ["pipe_cleaned"],
    connected: ["connected_to_met"],
    disconnected: ["one_end_disconnected"],
    labelled: ["label_fitted"],
    tight: ["clamp_fitted", "connected_to_met"],
    "nipped up": ["clamp_fitted", "connected_to_met"],
    "tightened up": ["clamp_fitted", "connected_to_met"],
    torqued: ["clamp_fitted", "connected_to_met"],
    "torqued up": ["clamp_fitted", "connected_to_met"],
    landed: ["connected_to_met"],
    terminated: ["connected_to_met"],
    proved: ["isolated_proved_dead"],
    "bolted down": ["clamp_fitted", "connected_to_met"],
    "bolted up": ["clamp_fitted", "connected_to_met"],
    "bolted on": ["clamp_fitted"],
    "in place": ["clamp_fitted", "label_fitted"],
  }
  const word = Object.keys(fits).find((key) => text === key || text.endsWith(` ${key}`))
  return word !== undefined && !fits[word]!.includes(asked)
}
