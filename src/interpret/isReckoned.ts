/**
 * Values that are one half of a sum or of a run: "twice eight metres", "a metre less than ten", "nought point one four,
 * take off nought point one for the leads", "ten mil as far as the loft, then six", "two lots of ten mil"; and those that
 * were worked out and not read, or only bound. Nothing is added up here: it is asked.
 */
import type { Claim } from "./Claim"
import type { Utterance } from "./Utterance"
import { trait } from "./wordTraits"

const before = /^(twice|thrice|double|treble)$/
const behind =
  /^(doubled|there and back|both ways|twice over|times (two|2)|(less|more|shorter|longer) than|less the|plus (the|another|a)\b)/
const leadsLeft =
  /^(less|minus|including|includes|with|plus|and that's with|that's with)( the| my)?( test)? leads?(?! (nulled|zeroed|off|out|taken))\b|\b(take|taking|knock|knocking) (it |that )?off\b.*\bleads?\b|\b(leads? still|not nulled|without nulling|before nulling)\b/
/** "with the leads it's …", "I haven't nulled but …", "leads were …, so …": told before the reading. */
const leadsBefore =
  /\b(with|includes|including)( the| my)?( test)? leads?\b(?! (nulled|zeroed|off|out|taken))|\b(haven't|not|never|didn't|without) (nulled|null|nulling|zeroed)\b|\bleads? (were|was|are|is|read|reads|measured|came)\b(?!.*nulled).*\bso( (it's|that's|that leaves|that makes it|call it|it is))*$/
/** Worked out, and not read. */
const workedOut =
  /\b(calculated|calculates|calculation|works out|worked out|works it out|comes to on paper)( (it|it's|that|to|at|as|be|is))*$/
/** "two lots of ten mil": conductors beside each other. */
const several = /\b((two|three|four|both|couple|pair|2|3) )?(lots|runs|lengths|pair|couple|cores|bits) of( the)?$/
const goesOn = /\bthen( (it's|it|is|in|to|goes|drops|changes|steps|down|up|on|a))*$/

/** Whether the value is only a part of what was said about its field. */
export function isReckoned(claim: Claim, utterance: Utterance): boolean {
  const { words, islands, tokens } = utterance
  const { kind, value, from, to } = claim
  if (typeof value !== "number") return false
  // "12 m 50" may be twelve and a half.
  if (kind === "length" && /^(space|none)$/.test(tokens[to - 1]!.after) && isFigureBehind(to, utterance)) return true
  if ((utterance.traits & trait.reckons) === 0) return false
  const isTwice = from > 0 && before.test(words[from - 1]!) && tokens[from - 1]!.after === "space"
  if (isTwice && kind !== "conductor_csa") return true
  const rest = words.slice(to, to + 8).join(" ")
  if (behind.test(rest)) return true
  const lead = words.slice(Math.max(0, from - 4), from).join(" ")
  if (kind === "resistance")
    return (
      leadsLeft.test(words.slice(to, to + 14).join(" ")) ||
      workedOut.test(lead) ||
      leadsBefore.test(words.slice(0, from).join(" "))
    )
  if (kind === "distance") return claim.isBare && /\b(within|inside)( the)?$/.test(lead)
  if (kind === "conductor_csa" && (several.test(lead) || /^(each )?(in parallel|doubled up|twinned)\b/.test(rest)))
    return true
  if (kind !== "conductor_csa" || !words.includes("then")) return false
  const next = islands.find((one) => one.from >= to && (one.said.has("n") || one.said.has("item")))
  return (
    next !== undefined &&
    !next.said.has("item") &&
    isSizeOf(next.rule) &&
    goesOn.test(words.slice(to, next.from).join(" "))
  )
}

const isFigureBehind = (at: number, { islands, numbers, tokens }: Utterance): boolean =>
  islands.some((one) => one.from === at && one.rule === "quantity.bare") &&
  numbers.some(
    (one) => one.from === at && !one.spoken && one.shape === "whole" && one.value < 100 && tokens[at]!.isFigure,
  )

const isSizeOf = (rule: string): boolean => /^(quantity\.(bare|mil)|size\.size)$/.test(rule)
