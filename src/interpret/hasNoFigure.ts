/**
 * An answer to the open question that gives an amount and no figure: "stupidly high", "a hand's width", "seven strand".
 * It was meant for the question, so it is asked again and not let pass in silence.
 */
import type { Context } from "../facts/Interpretation"
import { isMeasured } from "./Claim"
import type { Utterance } from "./Utterance"

const lead = "(it's|it is|that's|is|just|only|about|roughly|well|oh|fairly|mate|the) "
const degree =
  "(very|really|quite|pretty|dead|too|far|way|much|stupidly|ridiculously|silly|daft|bit|a bit|a|sky|rather|awful|awfully|fair|good) "
const amount =
  "(high|low|long|short|far|close|thick|thin|big|small|tiny|huge|massive|heavy|light|miles|way|distance|run|bit)"
const vague = new RegExp(`^(${lead})*((${degree})*${amount} ?)+$`)
const body = new RegExp(
  `^(${lead}|(a|an|one|half|half a|couple of|a couple of) )*(hand|hand's|hands|arm|arm's|finger|finger's|thumb|thumb's|foot's|boot's)( (width|length|breadth|span|reach))( (off|from|away|above|below).*)?$`,
)
const steps = new RegExp(
  `^(${lead}|(a|one|couple of|a couple of|few|a few) )*(stride|strides|pace|paces|span)( (off|from|away).*)?$`,
)
const strands = new RegExp(`^(${lead}|a )*\\w+ (strand|strands|stranded|core|cores)( (stuff|one|cable|wire|copper))?$`)

/** "greater than, er": the number never came. */
const bound = /^(it's |is )?(greater|more|less|higher|lower|bigger|smaller) than( (a|the|about|er|um|uh|erm))*$/

/** One of these is in every such answer. */
const heads = new Set(
  "high low long short far close thick thin big small tiny huge massive heavy light miles way distance run bit width length breadth span reach stride strides pace paces strand strands stranded core cores than imperial".split(
    " ",
  ),
)

/** Whether the words answer the open question for a measure without a figure that it could take. */
export function hasNoFigure({ words, numbers }: Utterance, context: Context): boolean {
  const { asked } = context
  if (!isMeasured(asked) || words.length > 8) return false
  if (!words.some((word) => heads.has(word))) return false
  const text = words.join(" ")
  if (asked === "conductor_csa" && (strands.test(text) || words.includes("imperial"))) return true
  return numbers.length === 0 && (vague.test(text) || bound.test(text) || body.test(text) || steps.test(text))
}
