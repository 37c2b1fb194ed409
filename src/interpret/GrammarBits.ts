/** The grammars that phrases come from, as bits: what an utterance holds no phrase of need not be looked for in it. */
import { askedRules, islandRules } from "./islandRules"

const grammarOf = (rule: string): string => rule.slice(0, rule.indexOf("."))
const names = [...new Set([...islandRules, ...Object.values(askedRules).flat()].map(grammarOf))]

/** The bits of these grammars. Throws for one that no rule is looked for from. */
export const bitsOf = (...grammars: readonly string[]): number =>
  grammars.reduce((bits, name) => {
    const at = names.indexOf(name)
    if (at === -1) throw new Error(`no phrases are looked for from the grammar ${name}`)
    return bits | (1 << at)
  }, 0)

/** The bit of the grammar that a rule stands in. */
export const bitOfRule = (rule: string): number => bitsOf(grammarOf(rule))
