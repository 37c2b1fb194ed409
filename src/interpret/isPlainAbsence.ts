/**
 * "there isn't any, they cook on electric": a sentence that opens by saying that the part asked after is not there, and
 * then tells why in words that we need not know. Whatever wavers, or has not looked yet, says nothing of the kind.
 */
import type { Utterance } from "./Utterance"

const opens =
  /^((no|nah|naw|oh|well|och|ach) )?(none|neither|there (isn't|isnae|isna|ain't|aren't|is no|are no|is none)|there's (no|nae|nee|none|nowt)|not a (drop|bit|sign|sniff|trace|pipe) of|no (heating|gas|oil|water|steel|steelwork|structural|lightning)|nae (heating|gas|oil|water))\b/
const tookAway =
  /^(no|nah|naw|nope) .*\b(capped|taken (away|out)|removed|long gone|never (was|had)|ripped out|cut off)\b/
const wavers =
  /\b(but|looked|look|know|sure|yet|think|idea|seen|found|find|checked|maybe|might|today|on at the (moment|minute))\b/
const doubts =
  /^(guards\.(hedge|condition|plan|question|wonder|except|rounding)|answers\.(maybe|confirm|repeat|skip)|commands)/

const saysLittle = /^(any|right|just)$/

/** Whether the sentence is such a one; which part was asked after is for the caller to see. */
export function isPlainAbsence({ words, islands, numbers }: Utterance): boolean {
  const text = words.join(" ")
  const isSaid = opens.test(text) || tookAway.test(text)
  return (
    isSaid &&
    !wavers.test(text) &&
    numbers.length === 0 &&
    !islands.some((one) => doubts.test(one.rule) && !saysLittle.test(words.slice(one.from, one.to).join(" ")))
  )
}
