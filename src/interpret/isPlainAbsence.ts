/**
 * "there isn't any, they cook on electric": a sentence that opens by saying that the part asked after is not there, and
 * then tells why in words that we need not know. Whatever wavers, or has not looked yet, says nothing of the kind.
 */
import { isEdgeGap } from "./Token"
import { tagValue, type Utterance } from "./Utterance"

/** Said of whatever was asked after: these must stand by themselves. */
const alone =
  /^((no|nah|naw|oh|well|och|ach) )?(none|neither|there (isn't|isnae|isna|ain't) (any|ony|one)|there's (none|nowt))$/
/** Said of the part that is named behind it. */
const opens =
  /^((no|nah|naw|oh|well|och|ach) )?(neither |there (isn't|isnae|isna|ain't|aren't|is no|are no) (any |ony )?|there's (no|nae|nee) |not a (drop|bit|sign|sniff|trace) of |(no|nae) )(the )?$/
const tookAway =
  /^(no|nah|naw|nope) (it|they)('s|'d| was| were| had| has)( been| all)* (capped|taken (away|out)|removed|long gone|ripped out|cut off)\b/
const wavers =
  /\b(but|looked|look|know|sure|yet|think|idea|seen|found|find|checked|maybe|might|today|smell|on at the (moment|minute))\b/
const doubts =
  /^(guards\.(hedge|condition|plan|question|wonder|except|rounding)|answers\.(maybe|confirm|repeat|skip)|commands)/

const saysLittle = /^(any|right|just)$/

/** What may stand right behind the part without being what is missing in its stead: "no gas in here", "no gas, see". */
const mayFollow =
  /^(here|there|in|on|at|to|for|that|i|now|mate|pal|either|neither|nor|and|no|never|so|see|love|sorry|thanks|thank|as|far|of|it|it's|they|they've|we|we've|this|just|only|all|whatsoever|anywhere|line|pipe|main|laid|been|was)$/

/** "no gas smell", "no water today": something of the part, or the moment, is what is missing, and not the part. */
export const isOfElse = ({ words, islands, tokens }: Utterance, item: string): boolean => {
  const part = islands.find((one) => tagValue(one, "item") === item)
  if (!part && islands.some((one) => one.rule === "parts.notPart")) return true
  const next = part && part.to < words.length && tokens[part.to - 1]!.after === "space" ? part.to : null
  const isNoun = next !== null && islands.every((one) => one.from !== next) && !mayFollow.test(words[next]!)
  return isNoun || /\b(today|yet|at the (moment|minute)|the now|just now|smell|smelt)\b/.test(words.join(" "))
}

/** Whether the sentence is such a one about that part. */
export function isPlainAbsence({ words, islands, numbers, tokens }: Utterance, item: string): boolean {
  const text = words.join(" ")
  const pause = tokens.findIndex((token) => isEdgeGap(token.after))
  const part = islands.find((one) => tagValue(one, "item") === item)
  const isNamed =
    part !== undefined &&
    opens.test(`${words.slice(0, part.rule === "guards.absent" ? part.from + 1 : part.from).join(" ")} `)
  const isSaid = isNamed || alone.test(words.slice(0, pause + 1 || undefined).join(" ")) || tookAway.test(text)
  const isDoubted = islands.some(
    (one) => doubts.test(one.rule) && !saysLittle.test(words.slice(one.from, one.to).join(" ")),
  )
  return isSaid && !wavers.test(text) && numbers.length === 0 && !isDoubted
}
