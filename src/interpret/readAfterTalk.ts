/**
 * A wish that stands alone behind its reason: "I'd the drill going, what did you say", "I never meant that last one to go
 * in, get rid of it". Only what writes nothing or takes back is read so.
 */
import type { Interpretation } from "../facts/Interpretation"
import { bitsOf } from "./GrammarBits"
import { isEdgeGap } from "./Token"
import type { Utterance } from "./Utterance"

const answers = bitsOf("answers")
const repeats =
  /^(what did you say|say (that |it )?again|what was that|what was (that|the) last \w+|come again|repeat that|(i )?(missed|didn't catch) that)$/
const wipes = /^(undo|scratch|delete|remove|wipe|cancel|bin|scrap|lose|get rid of|take|rub|scrub|strike)\b/
/** Words that say of what was written that it should not have been. */
const unwanted =
  /\b(never meant|didn't mean|not meant|shouldn't (be|have)|wasn't meant)\b.*\b(last|that|it)\b|\b(that|the) last (one|entry|reading|number|size|bit)\b.*\b(wrong|rubbish|no good|not right)\b/

/** The wish, or null when the utterance does not end in one of its own. */
export function readAfterTalk({ words, tokens, islands, numbers }: Utterance): Interpretation | null {
  const last = islands.at(-1)
  if (
    !last ||
    last.grammar !== answers ||
    !/^answers\.(repeat|undo)$/.test(last.rule) ||
    last.to !== words.length ||
    last.from === 0
  )
    return null
  if (!isEdgeGap(tokens[last.from - 1]!.after) || numbers.length > 1 || islands.some((one) => isValue.test(one.rule)))
    return null
  const text = words.slice(last.from, last.to).join(" ")
  const isWish =
    last.rule === "answers.repeat"
      ? repeats.test(text)
      : wipes.test(text) && unwanted.test(words.slice(0, last.from).join(" "))
  return isWish
    ? { facts: [{ kind: last.rule === "answers.repeat" ? "repeat" : "undo", value: true }], ask: null, command: null }
    : null
}

const isValue =
  /^(size|length|distance|resistance|supply|arrangement|parts|tasks|survey|commands|notes)\.|^steps\.(?!done|thing)/
