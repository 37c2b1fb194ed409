/** How large a rule is for an engine: its different words, its word places once rules are written out, its sentences. */
import type { Expansion } from "./Expansion"
import type { GrammarSet } from "./linkGrammars"

export interface GrammarSize {
  /** Different words, in alphabetical order. */
  words: readonly string[]
  /** Word places after every rule reference is replaced by its rule: what a decoder has to search. */
  arcs: number
  /** Different ways through, repeats counted up to twice; Infinity when beyond 1e300. */
  sentences: number
}

/** Measures `root` (a full name). */
export function measureGrammar(set: GrammarSet, root: string): GrammarSize {
  const words = new Set<string>()
  const seen = new Map<string, { arcs: number; sentences: number }>()
  const measureRule = (rule: string): { arcs: number; sentences: number } => {
    const known = seen.get(rule)
    if (known) return known
    const size = measure(set.get(rule)!.expansion)
    seen.set(rule, size)
    return size
  }
  const measure = (expansion: Expansion): { arcs: number; sentences: number } => {
    switch (expansion.type) {
      case "word":
        words.add(expansion.word)
        return { arcs: 1, sentences: 1 }
      case "ref":
        return measureRule(expansion.rule)
      case "sequence":
      case "choice": {
        const sizes = expansion.items.map(measure)
        const arcs = sizes.reduce((sum, size) => sum + size.arcs, 0)
        const isSum = expansion.type === "choice"
        const sentences = sizes.reduce(
          (all, size) => (isSum ? all + size.sentences : all * size.sentences),
          isSum ? 0 : 1,
        )
        return { arcs, sentences }
      }
      case "optional": {
        const size = measure(expansion.item)
        return { arcs: size.arcs, sentences: size.sentences + 1 }
      }
      case "repeat": {
        const { arcs, sentences } = measure(expansion.item)
        return { arcs, sentences: sentences + sentences * sentences + (expansion.least === 0 ? 1 : 0) }
      }
      case "tagged":
        return measure(expansion.item)
    }
  }
  const { arcs, sentences } = measureRule(root)
  return { words: [...words].sort(), arcs, sentences }
}
