/**
 * Prepares rules for matching: every part of a rule learns which words it can begin with and whether it can be empty,
 * so that the matcher enters only what can succeed.
 */
import type { Expansion } from "./Expansion"
import { findNullableRules, type GrammarSet, isNullable } from "./linkGrammars"

export interface Node {
  expansion: Expansion
  nullable: boolean
  parts: readonly Node[]
  /** Words it can begin with; null when it can be empty. */
  first: ReadonlySet<string> | null
}

/** The form that marks a place where a rule that the caller reads itself begins. No grammar word looks like it. */
export const formOf = (rule: string): string => `<${rule}>`

/** Compiled rules by full name. `givenRules` are read by the caller, and begin where their form stands. */
export function compileRules(set: GrammarSet, givenRules: ReadonlySet<string>): ReadonlyMap<string, Node> {
  const nullable = findNullableRules(set)
  const nodes = new Map<string, Node>()
  const nodeOfRule = (name: string): Node => {
    const known = nodes.get(name)
    if (known) return known
    const node = compile(set.get(name)!.expansion)
    nodes.set(name, node)
    return node
  }
  const firstOf = (expansion: Expansion, parts: readonly Node[]): ReadonlySet<string> | null => {
    switch (expansion.type) {
      case "word":
        return new Set([expansion.word])
      case "ref":
        return givenRules.has(expansion.rule) ? new Set([formOf(expansion.rule)]) : nodeOfRule(expansion.rule).first
      case "sequence":
        return firstOfSequence(parts)
      case "choice":
        return union(parts.map((part) => part.first))
      default:
        return parts[0]!.first
    }
  }
  const compile = (expansion: Expansion): Node => {
    const parts = partsOf(expansion).map(compile)
    const isEmpty = isNullable(expansion, nullable)
    return { expansion, nullable: isEmpty, parts, first: isEmpty ? null : firstOf(expansion, parts) }
  }
  for (const name of set.keys()) nodeOfRule(name)
  return nodes
}

function partsOf(expansion: Expansion): readonly Expansion[] {
  if (expansion.type === "sequence" || expansion.type === "choice") return expansion.items
  return "item" in expansion ? [expansion.item] : []
}

/** First words of all parts up to and with the first that cannot be empty. */
function firstOfSequence(parts: readonly Node[]): ReadonlySet<string> | null {
  const solid = parts.findIndex((part) => !part.nullable)
  return union(parts.slice(0, solid + 1).map((part) => (part.nullable ? firstInside(part) : part.first)))
}

const firstInside = (part: Node) =>
  part.expansion.type === "optional" || part.expansion.type === "repeat" ? part.parts[0]!.first : null

function union(sets: ReadonlyArray<ReadonlySet<string> | null>): ReadonlySet<string> | null {
  const all = new Set<string>()
  for (const set of sets) {
    if (!set) return null
    for (const word of set) all.add(word)
  }
  return all
}
