/**
 * What a question waits for, out of the grammar that is open under it: the alternatives of the first rule that weigh more
 * than one. All else can be said as well, but is said so much less often that it has to fit better.
 */
import { type Automaton, readFlatGrammar } from "./flatGrammar"

/** Null where no alternative weighs more than another. */
export const readAwaited = (jsgf: string): Automaton | null => {
  const [whole, before, body] = /(public\s+<[^>]+>\s*=)\s*\(([^;]*)\)\s*;/.exec(jsgf) ?? []
  if (whole === undefined || body === undefined) return null
  const likely = splitChoices(body).filter((one) => Number(/^\s*\/([\d.]+)\//.exec(one)?.[1] ?? 1) > 1)
  return likely.length > 0 ? readFlatGrammar(jsgf.replace(whole, `${before} ${likely.join(" | ")};`)) : null
}

const splitChoices = (body: string): string[] => {
  const parts = [""]
  let depth = 0
  for (const sign of body) {
    if ("([".includes(sign)) depth++
    if (")]".includes(sign)) depth--
    if (sign === "|" && depth === 0) parts.push("")
    else parts.push(parts.pop()! + sign)
  }
  return parts
}
