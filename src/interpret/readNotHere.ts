/** "no oil here", "there's no gas on site": parts that were looked for and are not on this job. */
import type { Fact } from "../facts/Fact"
import type { Interpretation } from "../facts/Interpretation"
import { tagValue, type Utterance } from "./Utterance"

/** Without a place it may be said of the moment: "no water" while the main is off. */
const places = /\b(here|on site|in the place|in this one|on this job|at all)\b/

/** Null unless the whole sentence says only which parts are not here. */
export function readNotHere(utterance: Utterance): Interpretation | null {
  const items = utterance.islands.map((one) => (one.rule === "guards.absent" ? tagValue(one, "item") : undefined))
  const isClear = utterance.isClear
  if (items.length === 0 || items.includes(undefined) || !isClear) return null
  if (!places.test(utterance.words.join(" ")) || /\?\s*$/.test(utterance.text)) return null
  const facts = items.map((item): Fact => ({ kind: "survey", value: "not_here", subject: item! }))
  return { facts, ask: null, command: null }
}
