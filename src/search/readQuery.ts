/**
 * Plain words as conditions: what is a day, a value, a part, a supply or a state is taken as that; all other words are
 * looked for in the place and in what was said. Nothing is dropped in silence: what sets no condition is handed back
 * with the reason, so that nobody takes a list for narrower than it is.
 */
import type { Arrangement } from "../facts/Fact"
import type { Item } from "../facts/Item"
import type { LocalDay } from "../interpret/LocalDay"
import type { Condition, JobState, Query } from "./Condition"
import { Cursor } from "./Cursor"
import { readDays } from "./readDays"
import { readValue } from "./readValue"
import { splitWords } from "./splitWords"
import { takeItem } from "./takeItem"

export interface QueryContext {
  today: LocalDay
  /** Items on the jobs that are searched, the workers' own names among them. */
  items: readonly Item[]
}

type Reading = { condition: Condition } | { because: string }

const supplies: readonly (readonly [Arrangement, string])[] = [
  ["TN-C-S", "tn-?c-?s|pme"],
  ["TN-S", "tn-?s"],
  ["TT", "tt"],
]
const states: readonly (readonly [JobState, string])[] = [
  ["stop", "(?:open )?stops?(?! (?:valve|cock|tap|listening))"],
  ["warn", "(?:open )?warnings?"],
  ["open", "(?:anything |things )?to look at|open findings?|open(?! circuit)"],
  ["kept", "kept(?: on purpose| values?| warnings?)?"],
  ["awaiting", "(?:a)?waiting(?: for)?(?: an?)?(?: yes| answer)?|unconfirmed"],
  ["unseen", "unseen|nobody (?:has )?said yes(?: to)?"],
  ["signed", "signed(?: off)?"],
  ["copy", "(?:second )?cop(?:y|ies)"],
]
/** Words that set nothing by themselves. "At" is none of them here: it says that a place follows. */
const fillers =
  "with|and|jobs?|all|the|a|an|in|of|has|have|having|that|where|are|is|was|were|which|show|me|find|only|any|on|for"

const readState = (cursor: Cursor): Reading | null =>
  cursor.attempt(() => {
    if (cursor.take("unsigned")) return { condition: { kind: "state", state: "signed", not: true } }
    const not = cursor.take("no|not(?: yet)?|without(?: any| an?)?") !== null
    const state = states.find(([, pattern]) => cursor.take(pattern))?.[0]
    return state ? { condition: { kind: "state", state, not } } : null
  })

const readHas = (cursor: Cursor, items: readonly Item[]): Reading | null =>
  cursor.attempt(() => {
    const not = cursor.take("no|without(?: an?| any)?") !== null
    const item = takeItem(cursor, items)
    return item ? { condition: { kind: "has", item, not } } : null
  })

const readSupply = (cursor: Cursor): Reading | null => {
  const arrangement = supplies.find(([, pattern]) => cursor.take(pattern))?.[0]
  return arrangement ? { condition: { kind: "supply", arrangement } } : null
}

const readQuoted = (cursor: Cursor): Reading | null => {
  const quoted = /^["“']([^"”']+)["”']\s*/.exec(cursor.text.slice(cursor.at))
  const words = splitWords(quoted?.[1] ?? "")
  if (!quoted || words.length === 0) return null
  cursor.at += quoted[0].length
  return { condition: { kind: "words", words, in: "either" } }
}

const readThing = (cursor: Cursor, { today, items }: QueryContext): Reading | null => {
  if (cursor.take("or")) return { because: "all of the conditions have to hold" }
  const days = readDays(cursor, today)
  if (days) return "because" in days ? days : { condition: { kind: "days", ...days } }
  return (
    readQuoted(cursor) ?? readState(cursor) ?? readValue(cursor, items) ?? readHas(cursor, items) ?? readSupply(cursor)
  )
}

/** Free words up to the next thing that means more. `only` says that they are of the place, or were said. */
const readWords = (cursor: Cursor, context: QueryContext): { condition: Condition; end: number } | null => {
  const only = cursor.take("said|saying") ? "said" : cursor.take("at(?: the)?|place") ? "place" : "either"
  const words: string[] = []
  let end = cursor.at
  while (cursor.at < cursor.text.length) {
    const probe = new Cursor(cursor.text, cursor.at)
    if (words.length > 0 && readThing(probe, context)) break
    if (cursor.take(`${fillers}|at`)) continue
    const word = cursor.take('[^\\s,;"“”]+') ?? cursor.take(".")
    if (!word) break
    words.push(...splitWords(word[0]))
    end = cursor.end
  }
  return words.length > 0 ? { condition: { kind: "words", words, in: only }, end } : null
}

/** What a query asks for. The conditions come in the order of the words, each with its place in the text. */
export const readQuery = (text: string, context: QueryContext): Query => {
  const cursor = new Cursor(text.toLowerCase())
  const query: Query = { understood: [], notUnderstood: [] }
  const skip = () => {
    while (/^[\s,;.]/.test(cursor.text.slice(cursor.at))) cursor.at += 1
  }
  for (skip(); cursor.at < text.length; skip()) {
    const from = cursor.at
    const reading = readThing(cursor, context)
    const to = cursor.end
    if (reading && "condition" in reading) query.understood.push({ condition: reading.condition, from, to })
    else if (reading) query.notUnderstood.push({ text: text.slice(from, to), because: reading.because, from, to })
    else if (!cursor.take(fillers)) {
      const words = readWords(cursor, context)
      if (words) query.understood.push({ condition: words.condition, from, to: words.end })
      else if (cursor.at === from) cursor.at += 1
    }
  }
  return query
}
